import type { Instant } from '../instant.js'
import { round6 } from '../units.js'
import { type Hour, over } from './hour.js'

type Measured = Exclude<keyof Hour, 'at' | 'thunder'>

/** What can be: outside it a value is a fault of the source and counts as not given. Ends included. */
const possible = {
  airC: [-89, 60],
  rhPct: [0.1, 100],
  dewPointC: [-100, 45],
  windKmh: [0, 450],
  cloudPct: [0, 100],
  pressureHpa: [500, 1100],
  gustKmh: [0, 500],
  rainMm: [0, 500],
  rainChancePct: [0, 100],
  sunWm2: [0, 1500]
} as const satisfies Record<Measured, readonly [number, number]>

/** Two lists of hours as one, in order. Where both have an hour the newer counts, value by value; its nulls leave the older. */
export function mergeHours(older: readonly Hour[], newer: readonly Hour[]): readonly Hour[] {
  const byInstant = new Map<Instant, Hour>()
  for (const hour of [...older, ...newer]) {
    const known = byInstant.get(hour.at)
    byInstant.set(hour.at, known === undefined ? cleaned(hour) : over(known, cleaned(hour)))
  }
  return [...byInstant.values()].sort((a, b) => a.at - b.at)
}

function cleaned(hour: Hour): Hour {
  return {
    at: hour.at,
    airC: plausible('airC', hour.airC),
    rhPct: plausible('rhPct', hour.rhPct),
    dewPointC: plausible('dewPointC', hour.dewPointC),
    windKmh: plausible('windKmh', hour.windKmh),
    cloudPct: plausible('cloudPct', hour.cloudPct),
    pressureHpa: plausible('pressureHpa', hour.pressureHpa),
    gustKmh: plausible('gustKmh', hour.gustKmh),
    rainMm: plausible('rainMm', hour.rainMm),
    rainChancePct: plausible('rainChancePct', hour.rainChancePct),
    thunder: hour.thunder,
    sunWm2: plausible('sunWm2', hour.sunWm2)
  }
}

function plausible(name: Measured, value: number | null): number | null {
  const [low, high] = possible[name]
  if (value === null || !(value >= low && value <= high)) return null
  return round6(value)
}
