import { horizontalWm2 } from '../physics/radiation.js'
import { fading } from '../weather/local.js'
import { type Moved, type Nodes, perHour, stepS } from './nodes.js'

/** Sun off by this share under a clear sky, and by as much more under a full cover. Source: from memory. */
const sunSpread = { clear: 0.1, covered: 0.2 } as const

/** The source's mean of the hour, spread over it as a clear sky would; from the height of the sun and cloud where it has none. */
export function sunBySteps(nodes: Nodes, clearWm2: Float64Array, cloud: Float64Array, moved: boolean): Float64Array {
  const out = new Float64Array(clearWm2.length)
  for (let hour = 0; hour + 1 < nodes.count; hour += 1) {
    const from = hour * perHour
    const told = nodes.sunWm2[hour] as number
    const clearMean = meanOf(clearWm2, from)
    const off = moved ? offBy(nodes.cloudPct[hour] as number) : 1
    if (Number.isNaN(told)) scale(out, clearWm2, from, clearMean > 0 ? Math.min(1, off * through(cloud, hour)) : 0)
    else if (clearMean < 1) out.fill(told * off, from, from + perHour)
    else scale(out, clearWm2, from, (told * off) / clearMean)
  }
  if (nodes.sunRead !== null) steer(out, clearWm2, nodes.sunRead)
  return out
}

/** A weaker sun than this tells nothing of the hours to come, W/m². From memory. */
const leastSunWm2 = 50
/** Cloud edges can add as much to a clear sky. From memory. */
const mostOfClear = 1.2

/** Sun as it was read, then back to what was foretold, fading as every reading does; in proportion, so that none is left at night. */
function steer(out: Float64Array, clearWm2: Float64Array, { step, wm2 }: NonNullable<Nodes['sunRead']>): void {
  const foretold = out[step] ?? 0
  if (!(foretold >= leastSunWm2)) return
  for (let k = step; k < out.length; k += 1) {
    const known = fading((k - step) * stepS)
    if (known < 0.01) return
    const moved = (out[k] as number) * (1 + known * (wm2 / foretold - 1))
    out[k] = Math.min(1500, k === step ? moved : mostOfClear * (clearWm2[k] as number), Math.max(0, moved))
  }
}

function scale(out: Float64Array, clearWm2: Float64Array, from: number, share: number): void {
  for (let k = from; k < from + perHour; k += 1) out[k] = Math.min(1500, (clearWm2[k] as number) * share)
}

/** More sun where cloud is taken away, less where it is added. */
function offBy(cloudPct: number): number {
  const share = sunSpread.clear + (sunSpread.covered * cloudPct) / 100
  return cloudPct >= 50 ? 1 + share : 1 - share
}

function meanOf(values: Float64Array, from: number): number {
  let sum = 0
  for (let k = from; k < from + perHour; k += 1) sum += values[k] as number
  return sum / perHour
}

/** Share of a clear sky's sun that comes through the cloud of the hour. */
function through(cloud: Float64Array, hour: number): number {
  const pct = ((cloud[hour] as number) + (cloud[hour + 1] as number)) / 2
  return horizontalWm2(90, pct) / horizontalWm2(90, 0)
}

/** Rain is taken to fall from an even chance on; a moist run has it from a low one, a dry run from a high one. From memory. */
const falls = { usual: 50, moist: 30, dry: 80 } as const
const drizzleMm = 0.2

export function rainBySteps(nodes: Nodes, moved: Moved): Float64Array {
  const out = new Float64Array((nodes.count - 1) * perHour)
  for (let hour = 0; hour + 1 < nodes.count; hour += 1) {
    const mm = rainOf(nodes.rainMm[hour] as number, nodes.chancePct[hour] as number, moved)
    if (mm > 0) out.fill(mm / perHour, hour * perHour, (hour + 1) * perHour)
  }
  return out
}

function rainOf(mm: number, chancePct: number, moved: Moved): number {
  if (moved === 'humidity')
    return mm > 0 || chancePct >= falls.moist || (Number.isNaN(mm) && Number.isNaN(chancePct)) ? Math.max(drizzleMm, mm || 0) : 0
  if (!(mm > 0)) return 0
  return Number.isNaN(chancePct) || chancePct >= (moved === 'start' ? falls.dry : falls.usual) ? mm : 0
}
