import type { LapsedBy } from '../../core/facts.js'
import type { CouponCause, FoamVerdict, Place, VoidCause, VoidOn } from '../../core/log/data.js'

export interface CouponWords {
  passed(welder: string): string
  failed(welder: string): string
  notJudged(welder: string): string
  lapsed(welder: string): string
  readonly welder: string
  width(narrowest: string, least: string | null): string
  readonly causes: Readonly<Record<CouponCause, string>>
  readonly moves: Readonly<Record<'temperature' | 'speed' | 'pressure', Readonly<Record<'up' | 'down', string>>>>
  next(moves: string): string
  readonly oneAtATime: string
  readonly cleared: string
  readonly notCleared: string
  notClearedBy(cause: string): string
  readonly lapsedBy: Readonly<Record<LapsedBy, string>>
  onHold(metres: string): string
  trend(mean: string, sigma: string): string
  short(chance: string): string
}

export interface StripWords {
  pieces(count: number): string
  length(amount: string): string
  land(amount: string, least: string | null): string
  corners(radius: string): string
  perimeter(all: string, robot: string, hand: string): string
  /** The same of one strip where there are several. */
  each(all: string, robot: string, hand: string): string
  /** Of all of them together. */
  together(all: string, robot: string, hand: string): string
  fromRoll(roll: string, count: number): string
  rolls(count: number): string
}

export interface ProbeWords {
  readonly closeArea: string
  readonly noVoids: string
  readonly states: Readonly<Record<'open' | 'repaired' | 'passed', string>>
  counts(open: number, repaired: number, passed: number): string
  number(n: number): string
  course(n: number): string
  readonly on: Readonly<Record<VoidOn, string>>
  readonly causes: Readonly<Record<VoidCause, string>>
  at(distance: string): string
  long(length: string): string
  rate(per100m: string, upper: string | null): string
}

export interface KitWords {
  name(kit: string): string
  readonly iso: string
  readonly resin: string
  parts(shell: string, mean: string, core: string): string
  ready(at: string): string
  cold(at: string): string
  startBy(at: string): string
  mixed(at: string): string
  expires(date: string): string
  lot(lot: string): string
  readonly places: Readonly<Record<Place, string>>
  readonly empty: string
  readonly none: string
}

export interface FoamWords {
  readonly verdicts: Readonly<Record<FoamVerdict, string>>
  openTime(amount: string): string
  scale(times: string): string
}

export interface LaidWords {
  area(amount: string): string
  welded(robot: string, hand: string): string
  yield(real: string, plan: string | null): string
  readonly noPlan: string
  /** Thin: more m² a kit than planned. */
  drift(amount: string, thin: boolean): string
}

export interface SiteWords {
  title(name: string): string
  readonly sites: string
  readonly none: string
  readonly keys: Readonly<
    Record<
      'place' | 'zone' | 'units' | 'lang' | 'posts' | 'morning' | 'evening' | 'days' | 'hours' | 'limits' | 'substrate' | 'channel' | 'roof',
      string
    >
  >
  readonly units: Readonly<Record<'metric' | 'us', string>>
  readonly langs: Readonly<Record<'en' | 'es' | 'fr', string>>
  readonly posts: Readonly<Record<string, string>>
  readonly noPosts: string
  readonly substrates: Readonly<Record<string, string>>
  roof(width: string, depth: string, height: string): string
  readonly noChannel: string
  readonly closed: string
}

export interface PersonWords {
  readonly me: string
  /** Not chosen by the person. */
  readonly asSite: string
  /** One message a morning for all sites. */
  readonly summary: string
  undone(ids: string, count: number): string
  readonly nothingUndone: string
  corrected(id: string): string
  was(values: string): string
  now(values: string): string
}

export interface HelpWords {
  readonly commands: string
  readonly more: string
  readonly anyOrder: string
  usage(usage: string): string
  example(example: string): string
}
