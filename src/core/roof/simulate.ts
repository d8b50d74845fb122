import type { Instant } from '../instant.js'
import { surfaceC } from '../physics/surface.js'
import type { Hour } from '../weather/hour.js'
import { fading, readingSpread } from '../weather/local.js'
import { clearSun, type Drive, movedDrive, plainDrive } from './drive.js'
import { gridOf } from './grid.js'
import { hourS, type Moved, nodesOf, stepS, type Weather } from './nodes.js'
import { type Run, runSurface, type Start } from './run.js'
import type { RoofSeries, SurfaceSeries } from './series.js'
import type { Told } from './step.js'
import type { Surface, Surfaces } from './surface.js'

/** What a person told of a surface: what it read, or that it was dry, wet or rained on. */
export interface Sighting {
  readonly at: Instant
  readonly surfaceC?: number
  readonly wet?: 'dry' | 'wet' | 'rain'
}

/** Everything but the hours that a roof is known by. */
export interface RoofState extends Weather {
  readonly surfaces: Surfaces
  readonly told: { readonly substrate: readonly Sighting[]; readonly sheet: readonly Sighting[] }
}

/** The runs beside the plain one, each with one thing moved by its spread; a last one starts dry. */
const movedRuns = ['air', 'humidity', 'wind', 'cloud'] as const satisfies readonly Moved[]

/** What no run covers, K: the properties of the surface, and the formulas themselves. Source: from memory. */
const ownSpreadK = 0.7
/** How far the build-up may be off at the start, K. Source: from memory. */
const startSpreadK = 5
/** How full of water a surface is that is stated wet: the plain run, the moist and the dry one. Source: from memory. */
const wetShare = { usual: 0.5, moist: 1, dry: 0.2 } as const

/**
 * Temperature and water of both surfaces, every 5 min from 36 h before `knownAt` (or where the kept hours begin) to 72 h after
 * it (or where they end): values missing for more than 3 h end it. It starts wet, and a second run dry: what the hours of a
 * day and a night have dried is known, what they have not is not. Null without hours to go by; RangeError for impossible
 * values, NaN among them. Pure.
 */
export function simulate(hours: readonly Hour[], state: RoofState): RoofSeries | null {
  const nodes = nodesOf(hours, state)
  if (nodes === null) return null
  const clearWm2 = clearSun(state.lat, state.lon, nodes)
  const plain = plainDrive(nodes, clearWm2)
  const drives = movedRuns.map((moved) => movedDrive(nodes, clearWm2, plain, moved))
  const dry = movedDrive(nodes, clearWm2, plain, 'start')
  const of = (surface: Surface, told: readonly Sighting[]) => {
    const grid = gridOf(surface.layers, stepS)
    const cloudPct = nodes.cloudPct[0] as number
    const settledC = settled(surface, plain, cloudPct)
    const run = (drive: Drive, moved: Moved): Run =>
      runSurface(surface, grid, drive, startOf(settledC, surface, moved), toSteps(told, nodes.startAt, drive.steps, moved))
    const base = run(plain, 'nothing')
    const moved = movedRuns.map((each, index) => run(drives[index] as Drive, each))
    return combined(base, moved, run(dry, 'start'), readAt(told), nodes.startAt)
  }
  return {
    startAt: nodes.startAt,
    endAt: nodes.startAt + (nodes.count - 1) * hourS,
    stepS,
    stale: state.knownAt - state.issuedAt > 3 * hourS,
    rainMm: plain.rainMm,
    substrate: of(state.surfaces.substrate, state.told.substrate),
    sheet: of(state.surfaces.sheet, state.told.sheet)
  }
}

/** Where a dry surface would settle in the first step's weather. */
function settled({ absorptance, emissivity }: Surface, drive: Drive, cloudPct: number): number {
  const airC = drive.airC[0] as number
  const windKmh = Math.max(0, (((drive.hWm2K[0] as number) - 5.7) / 3.8) * 3.6)
  // The sky of a dew point a little below the air: no more than a start, which the first hours forget.
  return surfaceC({ airC, dewPointC: airC - 5, windKmh, sunWm2: drive.sunWm2[0] as number, cloudPct, absorptance, emissivity })
}

function startOf(surfaceStartC: number, surface: Surface, moved: Moved): Start {
  const dry = moved === 'start'
  return { surfaceC: surfaceStartC, filmMm: dry ? 0 : surface.filmMaxMm, movedK: dry ? startSpreadK : 0 }
}

function toSteps(told: readonly Sighting[], startAt: Instant, steps: number, moved: Moved): readonly Told[] {
  const share = moved === 'humidity' ? wetShare.moist : moved === 'start' ? wetShare.dry : wetShare.usual
  return told
    .map(({ at, surfaceC: read, wet }) => ({
      step: Math.round((at - startAt) / stepS) - 1,
      surfaceC: read ?? null,
      filmShare: wet === undefined ? null : wet === 'dry' ? 0 : wet === 'rain' ? 1 : share
    }))
    .filter(({ step }) => step >= -1 && step < steps)
    .sort((a, b) => a.step - b.step)
}

function readAt(told: readonly Sighting[]): readonly Instant[] {
  return told.flatMap(({ at, surfaceC: read }) => (read === undefined ? [] : at))
}

/**
 * One standard deviation from what each moved run differs by; a reading brings it down to its own, from where it grows again.
 * Of the wet start and the dry one neither is likelier: the value lies half way, and so far is it off.
 */
function combined(base: Run, runs: readonly Run[], dryStart: Run, read: readonly Instant[], startAt: Instant): SurfaceSeries {
  const surface = middle(
    base.surfaceC,
    runs.map(({ surfaceC: each }) => each),
    dryStart.surfaceC,
    ownSpreadK
  )
  const film = middle(
    base.filmMm,
    runs.map(({ filmMm }) => filmMm),
    dryStart.filmMm,
    0
  )
  if (read.length > 0) {
    const unread = middle(
      base.unreadC,
      runs.map(({ unreadC }) => unreadC),
      dryStart.unreadC,
      ownSpreadK
    )
    for (const at of read) regrow(surface.spread, unread.spread, at, startAt)
    for (const at of read) calm(surface.spread, at, startAt)
  }
  return { surfaceC: surface.value, spreadK: surface.spread, filmMm: film.value, filmSpreadMm: film.spread }
}

function middle(
  base: Float64Array,
  runs: readonly Float64Array[],
  other: Float64Array,
  own: number
): { readonly value: Float64Array; readonly spread: Float64Array } {
  const value = new Float64Array(base.length)
  const spread = new Float64Array(base.length)
  for (let j = 0; j < base.length; j += 1) {
    const from = base[j] as number
    const half = ((other[j] as number) - from) / 2
    let sum = own * own + half * half
    for (let k = 0; k < runs.length; k += 1) {
      const off = ((runs[k] as Float64Array)[j] as number) - from
      sum += off * off
    }
    value[j] = from + half
    spread[j] = Math.sqrt(sum)
  }
  return { value, spread }
}

/** Errors of the weather last so long: what a reading told of them wears off with this time constant, s. Source: from memory. */
const lastingS = 24 * 3600

/** All runs pass through a reading, as if an error seen once stayed the same: lets the spread grow back to that without the reading. */
function regrow(spreadK: Float64Array, unreadK: Float64Array, at: Instant, startAt: Instant): void {
  for (let j = Math.max(0, Math.round((at - startAt) / stepS)); j < spreadK.length; j += 1) {
    const kept = Math.exp((-2 * (startAt + j * stepS - at)) / lastingS)
    spreadK[j] = Math.sqrt(kept * (spreadK[j] as number) ** 2 + (1 - kept) * (unreadK[j] as number) ** 2)
  }
}

/** Takes from what no run covers what a reading has told of it. */
function calm(spreadK: Float64Array, at: Instant, startAt: Instant): void {
  for (let j = Math.max(0, Math.round((at - startAt) / stepS)); j < spreadK.length; j += 1) {
    const known = fading(startAt + j * stepS - at) ** 2
    if (known < 1e-3) return
    spreadK[j] = Math.sqrt((spreadK[j] as number) ** 2 + known * (readingSpread.surfaceK ** 2 - ownSpreadK ** 2))
  }
}
