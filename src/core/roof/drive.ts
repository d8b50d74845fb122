import { dewPointC } from '../physics/air.js'
import { convectionWm2K } from '../physics/convection.js'
import { cosZenith, horizontalWm2 } from '../physics/radiation.js'
import { saturationWaterPa } from '../physics/saturation.js'
import { skyLongWaveWm2 } from '../physics/sky.js'
import { sunPosition } from '../physics/sun.js'
import { hourS, type Nodes } from './nodes.js'

/** A step of the balance, s; the sun is looked up in the middle of every third. */
export const stepS = 300
const perHour = hourS / stepS
const perSun = 3

/** Which of the values a run moves by its spread. */
export type Moved = 'nothing' | 'air' | 'humidity' | 'wind' | 'cloud' | 'start'

/** What the weather does to a roof, step by step; the instants are those at the end of each step. */
export interface Drive {
  readonly steps: number
  readonly airC: Float64Array
  readonly vapourPa: Float64Array
  readonly skyWm2: Float64Array
  readonly sunWm2: Float64Array
  readonly hWm2K: Float64Array
  readonly rainMm: Float64Array
  readonly gammaPaK: number
}

/** Height of the sun in degrees for each step. */
export function sunHeights(lat: number, lon: number, nodes: Nodes): Float64Array {
  const steps = (nodes.count - 1) * perHour
  const heights = new Float64Array(steps)
  for (let step = 0; step < steps; step += perSun) {
    heights.fill(sunPosition(lat, lon, nodes.startAt + (step + perSun / 2) * stepS).elevationDeg, step, step + perSun)
  }
  return heights
}

/** The weather of one run. A value that would leave its range is moved the other way. */
export function driveOf(nodes: Nodes, heightsDeg: Float64Array, moved: Moved): Drive {
  const { count } = nodes
  const vapour = new Float64Array(count)
  const sky = new Float64Array(count)
  const h = new Float64Array(count)
  const air = moved === 'air' ? nodes.airC.map((c, i) => c + (nodes.spread.airK[i] as number)) : nodes.airC
  const cloud = moved === 'cloud' ? nodes.cloudPct.map((pct, i) => reflected(pct, nodes.spread.cloudPct[i] as number)) : nodes.cloudPct
  for (let i = 0; i < count; i += 1) {
    const c = air[i] as number
    const said = nodes.rhPct[i] as number
    const rh = moved === 'humidity' ? moist(said, nodes.spread.rhPct[i] as number) : said
    const dewC = dewPointC(c, rh)
    vapour[i] = saturationWaterPa(dewC)
    sky[i] = skyLongWaveWm2(c, dewC, cloud[i] as number)
    const wind = (nodes.windKmh[i] as number) + (moved === 'wind' ? (nodes.spread.windKmh[i] as number) : 0)
    h[i] = convectionWm2K(Math.min(300, wind))
  }
  return {
    steps: heightsDeg.length,
    airC: bySteps(air),
    vapourPa: bySteps(vapour),
    skyWm2: bySteps(sky),
    sunWm2: sunBySteps(nodes, heightsDeg, cloud, moved === 'cloud'),
    hWm2K: bySteps(h),
    rainMm: rainBySteps(nodes, moved),
    gammaPaK: nodes.gammaPaK
  }
}

function reflected(pct: number, spread: number): number {
  return Math.min(100, Math.max(0, pct >= 50 ? pct - spread : pct + spread))
}

function moist(rhPct: number, spread: number): number {
  const up = rhPct + spread
  return up <= 100 ? up : Math.max(1, rhPct - spread)
}

function bySteps(nodes: Float64Array): Float64Array {
  const out = new Float64Array((nodes.length - 1) * perHour)
  for (let hour = 0; hour + 1 < nodes.length; hour += 1) {
    const from = nodes[hour] as number
    const by = ((nodes[hour + 1] as number) - from) / perHour
    for (let k = 0; k < perHour; k += 1) out[hour * perHour + k] = from + by * (k + 1)
  }
  return out
}

/** Sun told for an hour less or more by this share, as in `weather/at.ts`. Source: from memory. */
const sunSpreadShare = 0.25

/** The source's mean of the hour, spread over it as a clear sky would; from the height of the sun and cloud where it has none. */
function sunBySteps(nodes: Nodes, heightsDeg: Float64Array, cloud: Float64Array, moved: boolean): Float64Array {
  const out = heightsDeg.map((deg) => (deg > 0 ? horizontalWm2(deg, 0) : 0))
  for (let hour = 0; hour + 1 < nodes.count; hour += 1) {
    const told = nodes.sunWm2[hour] as number
    const from = hour * perHour
    const clearWm2 = meanOf(out, from)
    const less = (nodes.cloudPct[hour] as number) >= 50 ? 1 + sunSpreadShare : 1 - sunSpreadShare
    const share = moved && !Number.isNaN(told) ? less : 1
    if (!Number.isNaN(told) && clearWm2 < 1) out.fill(told * share, from, from + perHour)
    else for (let k = from; k < from + perHour; k += 1) out[k] = (out[k] as number) * (Number.isNaN(told) ? through(nodes, cloud, hour, moved) : (told * share) / clearWm2)
  }
  return out
}

function meanOf(values: Float64Array, from: number): number {
  let sum = 0
  for (let k = from; k < from + perHour; k += 1) sum += values[k] as number
  return sum / perHour
}

/** Share of a clear sky's sun that comes through the cloud of the hour; a moved one is off by the formula's own share too. */
function through(nodes: Nodes, cloud: Float64Array, hour: number, moved: boolean): number {
  const pct = ((cloud[hour] as number) + (cloud[hour + 1] as number)) / 2
  const share = horizontalWm2(90, pct) / horizontalWm2(90, 0)
  if (!moved) return share
  return (nodes.cloudPct[hour] as number) >= 50 ? Math.min(1, share * (1 + sunSpreadShare)) : share * (1 - sunSpreadShare)
}

/** Rain is taken to fall from an even chance on; a moist run has it from a low one, a dry run from a high one. From memory. */
const falls = { usual: 50, moist: 20, dry: 80 } as const
const drizzleMm = 0.2

function rainBySteps(nodes: Nodes, moved: Moved): Float64Array {
  const out = new Float64Array((nodes.count - 1) * perHour)
  for (let hour = 0; hour + 1 < nodes.count; hour += 1) {
    const mm = rainOf(nodes.rainMm[hour] as number, nodes.chancePct[hour] as number, moved)
    if (mm > 0) out.fill(mm / perHour, hour * perHour, (hour + 1) * perHour)
  }
  return out
}

function rainOf(mm: number, chancePct: number, moved: Moved): number {
  if (moved === 'humidity') return mm > 0 || chancePct >= falls.moist || (Number.isNaN(mm) && Number.isNaN(chancePct)) ? Math.max(drizzleMm, mm || 0) : 0
  if (!(mm > 0)) return 0
  return Number.isNaN(chancePct) || chancePct >= (moved === 'start' ? falls.dry : falls.usual) ? mm : 0
}
