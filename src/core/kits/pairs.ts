import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { KitData } from '../log/data.js'
import type { Step } from '../log/states/noted.js'
import type { Surroundings, Uniform } from './kit-model.js'
import type { ReadingPair } from './learn.js'
import { surroundingsOf } from './place.js'

type Part = 'isoC' | 'resinC'
const parts = ['isoC', 'resinC'] as const satisfies readonly Part[]

/** Longer apart says little more, and costs more to follow, s. */
const farthestS = 48 * 3600

interface Walk {
  /** The last reading that holds throughout, of each part. */
  readonly open: { readonly [K in Part]?: Uniform }
  readonly mixedAt: Instant | null
  readonly places: readonly { readonly at: Instant; readonly around: Surroundings }[]
  readonly pairs: readonly ReadingPair[]
}

/**
 * Pairs of readings of one kit in order of time: from one that holds throughout (of a kit mixed shortly before, or the first) to the next
 * of the same part of a mixed kit, by what the log says of where it stood; nothing is taken from a forecast. A kit that was sprayed from
 * in between is no longer full and says nothing, nor does one mixed in between without being read.
 */
export function pairsOf(steps: readonly Step[], kit: LimitsSheet['kit']): readonly ReadingPair[] {
  let walk: Walk = { open: {}, mixedAt: null, places: [], pairs: [] }
  for (const step of steps) walk = step.type === 'kit' ? stepOn(walk, step, kit) : { ...walk, open: {} }
  return walk.pairs
}

function stepOn(walk: Walk, { at, data }: Step, kit: LimitsSheet['kit']): Walk {
  const said = data as KitData
  const places = said.place === undefined ? walk.places : [...walk.places, { at, around: placeOf(said.place, said.placeC ?? null, kit) }]
  const mixedAt = said.mixed === undefined ? walk.mixedAt : said.mixed ? at : null
  const mixed = mixedAt !== null && at - mixedAt <= kit.mixedMaxMin * 60
  const kept = said.usedM2 !== undefined || said.empty === true ? {} : unmixedSince(walk, said.mixed === true)
  const pairs = parts.flatMap((part) => {
    const [from, c] = [kept[part], said[part]]
    if (from === undefined || c === undefined || !mixed || !(at - from.at <= farthestS)) return []
    return [{ from, mixed: { at, c }, around: alongOf(places) }]
  })
  // Both parts said in one number are one reading.
  const ended = pairs.filter((pair, index) => index === 0 || pair.from.c !== pairs[0]?.from.c || pair.mixed.c !== pairs[0]?.mixed.c)
  const open = Object.fromEntries(
    parts.flatMap((part) => {
      const c = said[part]
      if (c !== undefined && (mixed || kept[part] === undefined)) return [[part, { at, c }]]
      return kept[part] === undefined ? [] : [[part, kept[part]]]
    })
  )
  return { open, mixedAt, places, pairs: [...walk.pairs, ...ended] }
}

/** Readings before a mixing that nobody read say nothing of what comes after the next one. */
function unmixedSince({ open, mixedAt }: Walk, again: boolean): Walk['open'] {
  if (!again || mixedAt === null) return open
  return Object.fromEntries(parts.flatMap((part) => (open[part] !== undefined && open[part].at >= mixedAt ? [[part, open[part]]] : [])))
}

function placeOf(place: NonNullable<KitData['place']>, placeC: number | null, { hWM2K, cartonM2KW }: LimitsSheet['kit']): Surroundings {
  return surroundingsOf({ place, placeC, hours: [], hWM2K, cartonM2KW })
}

/** Where the kit stood at each instant; null before it was said. */
function alongOf(places: Walk['places']): Surroundings {
  return (at) => places.findLast((place) => place.at <= at)?.around(at) ?? null
}
