/** What stands in a sheet as written: keys end in the unit of the sheet's system. */
export type RawValue = number | boolean | string | null | readonly RawSection[] | RawSection
export interface RawSection {
  readonly [key: string]: RawValue
}

export interface RawLimit {
  readonly min?: number | null
  readonly max?: number | null
  readonly cautionBelow?: number | null
  readonly cautionAbove?: number | null
  readonly basis: string
}

/** A limits sheet as written in YAML, checked in form. What it leaves out comes from the sheet it extends, else from common practice. */
export interface RawSheet {
  readonly id: string
  readonly version: number
  readonly title: string
  readonly units: 'metric' | 'us'
  readonly extends: string | null
  readonly limits: Readonly<Record<string, RawLimit>>
  readonly maxAgeMin: RawSection
  readonly changed: RawSection
  readonly spread: RawSection
  readonly sheet: RawSection
  readonly strip: RawSection
  readonly foam: RawSection
  readonly kit: RawSection
  readonly substrates: Readonly<Record<string, RawSection>>
  readonly site: RawSection
  readonly power: RawSection
  readonly crew: RawSection
  readonly takeoff: RawSection
}
