export type TakeoffItem = 'rolls' | 'bareBack' | 'kits' | 'nozzles' | 'patches' | 'cleaner' | 'fasteners' | 'bars' | 'weight' | 'pressure'

export type TakeoffUnit = 'piece' | 'm' | 'm2' | 'mm' | 'l' | 'kg' | 'kPa' | '%' | 'kg/m2' | 'm/l' | 'kN/kg'

/** A number of a sum, as it is written: taken alone, times or over what stands before it. */
export interface Factor {
  readonly by: '' | '×' | '÷'
  readonly value: number
  readonly unit: TakeoffUnit
}

/** One part of a sum: of which zone, leg or thing, and its factors from the left. `name` is one of the standard's zones or a number; null: there is one part. */
export interface Addend {
  readonly name: string | null
  readonly factors: readonly Factor[]
  readonly value: number
}

/** How a thing is sold: so many packs of so much. */
export interface Sale {
  readonly packs: number
  readonly of: number
  readonly unit: TakeoffUnit
}

/** A line of the takeoff: what comes out, and the sum that anyone can do again. */
export interface TakeoffLine {
  readonly item: TakeoffItem
  readonly value: number
  readonly unit: TakeoffUnit
  readonly sum: readonly Addend[]
  /** Added to the sum, %, before it is rounded. */
  readonly wastePct: number
  /** Up to whole pieces. */
  readonly whole: boolean
  /** Where pieces are cut from lengths: no plan needs fewer. Null elsewhere. */
  readonly bound: number | null
  /** Of what stands along a base, mm: at most so far apart. Null elsewhere. */
  readonly spacingMm: number | null
  /** Null for what is not bought. */
  readonly sale: Sale | null
}

/** Value of factors read from the left; a percentage counts as hundredths. */
export function addend(name: string | null, factors: readonly Factor[]): Addend {
  const value = factors.reduce((sum, { by, value: each, unit }) => {
    const plain = unit === '%' ? each / 100 : each
    if (by === '') return plain
    return by === '×' ? sum * plain : sum / plain
  }, 0)
  return { name, factors, value }
}

export function factor(by: Factor['by'], value: number, unit: TakeoffUnit): Factor {
  return { by, value, unit }
}

export function totalOf(sum: readonly Addend[], wastePct = 0): number {
  return sum.reduce((total, { value }) => total + value, 0) * (1 + wastePct / 100)
}

/** Up to the next whole number, but not for the last digit of a division. */
export function wholeUp(value: number): number {
  return Math.max(0, Math.ceil(value - 1e-9))
}

type Whole = Pick<TakeoffLine, 'item' | 'sum'> & Partial<Pick<TakeoffLine, 'wastePct' | 'bound' | 'spacingMm' | 'unit'>> & { readonly pack?: number }

/** A line in whole pieces (or litres), sold in packs. */
export function wholeLine({ item, sum, wastePct = 0, bound = null, spacingMm = null, unit = 'piece', pack = 1 }: Whole): TakeoffLine {
  const value = wholeUp(totalOf(sum, wastePct))
  return { item, value, unit, sum, wastePct, whole: true, bound, spacingMm, sale: { packs: wholeUp(value / pack), of: pack, unit } }
}
