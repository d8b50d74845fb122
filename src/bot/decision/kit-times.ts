import { localDate } from '../../core/instant.js'
import { type KitTimes, kitTimes } from '../../core/kits/schedule.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { LearnedMixing } from '../../core/log/data.js'
import type { KitState, PartReading } from '../../core/log/states/kit.js'
import { firstInstantAt } from '../../core/schedule.js'
import type { SiteSettings } from '../../core/site.js'
import { convert } from '../../core/units.js'
import type { Forecast } from '../../core/weather/forecast.js'

const dayS = 86_400

const unknown: KitTimes = { shellC: null, meanC: null, coreC: null, readyAt: null, likelyAt: null, coldAt: null, hotAt: null, startBy: null }

/** What the times of a kit follow from besides the kit. */
export interface KitSurroundings {
  readonly settings: SiteSettings
  readonly sheet: LimitsSheet
  readonly forecast: Forecast | null
  /** Temperature last stated for a box of the site, °C; null: none was. */
  readonly boxC: number | null
  /** How kits of the site warm, where that was learned from readings. */
  readonly learned: LearnedMixing | null
  readonly now: number
}

/** The temperature last stated for a box of the site, °C; null: none was. */
export function boxCOf(kits: readonly KitState[]): number | null {
  return kits.find(({ place, placeC }) => place?.value === 'box' && placeC !== null)?.placeC ?? null
}

/** Temperatures now, ready, too cold and in the box by, of the part of the kit that is worse off; all null without a reading. */
export function timesOfKit(kit: KitState, around: KitSurroundings): KitTimes {
  const parts = differing([kit.isoC, kit.resinC].filter((part) => part !== null))
  const wanted = nextStart(around.settings, around.now)
  const alone = parts.map((part) => timesOfPart(kit, part, wanted, around))
  const [one, other] = alone
  if (one === undefined) return unknown
  if (other === undefined) return one
  const readyAt = one.readyAt === null || other.readyAt === null ? null : Math.max(one.readyAt, other.readyAt)
  // Neither part leaves the box before both are ready; on the deck they stand already.
  const standing = readyAt === null || placeOf(kit) === 'deck'
  const together = standing ? alone : parts.map((part) => timesOfPart(kit, part, Math.max(readyAt, wanted ?? readyAt), around))
  const colder = (other.meanC ?? 0) < (one.meanC ?? 0) ? other : one
  return {
    ...colder,
    readyAt,
    likelyAt: one.likelyAt === null || other.likelyAt === null ? null : Math.max(one.likelyAt, other.likelyAt),
    coldAt: earliest(together.map(({ coldAt }) => coldAt)),
    hotAt: earliest(alone.map(({ hotAt }) => hotAt)),
    startBy: earliest(alone.map(({ startBy }) => startBy))
  }
}

/** Parts that were read together as one have one course. */
function differing(parts: readonly PartReading[]): readonly PartReading[] {
  return parts.filter((part, index) => index === 0 || part.value !== parts[0]?.value || part.at !== parts[0]?.at)
}

function placeOf(kit: KitState): NonNullable<KitState['place']>['value'] {
  return kit.place?.value ?? 'deck'
}

/** A kit is taken to have stayed as it was read until it was put where it is; one whose place was never said stands on the deck. */
function timesOfPart(kit: KitState, part: PartReading, readyBy: number | null, { sheet, forecast, boxC, learned, now }: KitSurroundings): KitTimes {
  const { min, max, unit } = sheet.limits.kitTemperature
  const inC = (bound: number | null) => (bound === null ? null : convert(bound, unit, 'C'))
  return kitTimes({
    kit: { ...sheet.kit, mixing: learned?.mixing ?? sheet.kit.mixing },
    cartonM2KW: sheet.kit.cartonM2KW,
    reading: { at: Math.max(part.at, Math.min(kit.place?.at ?? part.at, now)), c: part.value },
    place: placeOf(kit),
    placeC: kit.placeC,
    hours: forecast?.hours ?? [],
    boxC,
    limits: { minC: inC(min), maxC: inC(max) },
    from: now,
    readyBy
  })
}

/** The next time that work begins at the site. */
function nextStart({ hours, zone }: SiteSettings, now: number): number | null {
  const [begins = '06:00'] = hours.split('-')
  const today = firstInstantAt(localDate(now, zone), begins, zone)
  return today !== null && today > now ? today : firstInstantAt(localDate(now + dayS, zone), begins, zone)
}

function earliest(list: readonly (number | null)[]): number | null {
  const known = list.filter((at) => at !== null)
  return known.length === 0 ? null : Math.min(...known)
}
