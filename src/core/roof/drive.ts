import type { Instant } from '../instant.js'
import { createMemo } from '../memo.js'
import { convectionWm2K } from '../physics/convection.js'
import { horizontalWm2 } from '../physics/radiation.js'
import { saturationWaterPa } from '../physics/saturation.js'
import { skyLongWaveWm2 } from '../physics/sky.js'
import { sunPosition } from '../physics/sun.js'
import { dewPoints, type Moved, type Nodes, perHour, stepS } from './nodes.js'
import { rainBySteps, sunBySteps } from './sun-and-rain.js'

/** The sun is looked up in the middle of every third step. */
const perSun = 3

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

/** The last ones asked for: a site asks for the same hours again and again, and the sun is slow to reckon. */
const clearSuns = createMemo<Float64Array>(64)

/** What a clear sky would send down in each step, W/m². */
export function clearSun(lat: number, lon: number, { startAt, count }: Nodes): Float64Array {
  return clearSuns(`${lat} ${lon} ${startAt} ${count}`, () => reckonClearSun(lat, lon, startAt, (count - 1) * perHour))
}

function reckonClearSun(lat: number, lon: number, startAt: Instant, steps: number): Float64Array {
  const clear = new Float64Array(steps)
  for (let step = 0; step < steps; step += perSun) {
    const { elevationDeg } = sunPosition(lat, lon, startAt + (step + perSun / 2) * stepS)
    if (elevationDeg > 0) clear.fill(horizontalWm2(elevationDeg, 0), step, step + perSun)
  }
  return clear
}

/** The weather of the plain run. */
export function plainDrive(nodes: Nodes, clearWm2: Float64Array): Drive {
  return {
    steps: clearWm2.length,
    airC: bySteps(nodes.airC),
    vapourPa: bySteps(nodes.dewC.map(saturationWaterPa)),
    skyWm2: bySteps(skyOf(nodes.airC, nodes.dewC, nodes.cloudPct)),
    sunWm2: sunBySteps(nodes, clearWm2, nodes.cloudPct, false),
    hWm2K: bySteps(nodes.windKmh.map((kmh) => convectionWm2K(Math.min(300, kmh)))),
    rainMm: rainBySteps(nodes, 'nothing'),
    gammaPaK: nodes.gammaPaK
  }
}

/** The weather of a run with one thing moved by its spread. A value that would leave its range is moved the other way. */
export function movedDrive(nodes: Nodes, clearWm2: Float64Array, plain: Drive, moved: Moved): Drive {
  const { airC, rhPct, dewC, windKmh, cloudPct, spread } = nodes
  switch (moved) {
    case 'air': {
      const air = airC.map((c, i) => c + (spread.airK[i] as number))
      return changed(plain, { airC: bySteps(air), ...moist(air, dewPoints(air, rhPct), cloudPct) })
    }
    case 'humidity': {
      const rh = rhPct.map((pct, i) => moister(pct, spread.rhPct[i] as number))
      return changed(plain, { ...moist(airC, dewPoints(airC, rh), cloudPct), rainMm: rainBySteps(nodes, moved) })
    }
    case 'wind':
      return changed(plain, { hWm2K: bySteps(windKmh.map((kmh, i) => convectionWm2K(Math.min(300, kmh + (spread.windKmh[i] as number))))) })
    case 'cloud': {
      const cloud = cloudPct.map((pct, i) => reflected(pct, spread.cloudPct[i] as number))
      return changed(plain, { skyWm2: bySteps(skyOf(airC, dewC, cloud)), sunWm2: sunBySteps(nodes, clearWm2, cloud, true) })
    }
    case 'start':
      return changed(plain, { rainMm: rainBySteps(nodes, moved) })
    case 'nothing':
      return plain
  }
}

/** One shape for all: the run that takes them is several times as slow when they differ. */
function changed({ steps, airC, vapourPa, skyWm2, sunWm2, hWm2K, rainMm, gammaPaK }: Drive, to: Partial<Drive>): Drive {
  return {
    steps,
    airC: to.airC ?? airC,
    vapourPa: to.vapourPa ?? vapourPa,
    skyWm2: to.skyWm2 ?? skyWm2,
    sunWm2: to.sunWm2 ?? sunWm2,
    hWm2K: to.hWm2K ?? hWm2K,
    rainMm: to.rainMm ?? rainMm,
    gammaPaK
  }
}

function moist(airC: Float64Array, dewC: Float64Array, cloudPct: Float64Array): Pick<Drive, 'vapourPa' | 'skyWm2'> {
  return { vapourPa: bySteps(dewC.map(saturationWaterPa)), skyWm2: bySteps(skyOf(airC, dewC, cloudPct)) }
}

function skyOf(airC: Float64Array, dewC: Float64Array, cloudPct: Float64Array): Float64Array {
  return airC.map((c, i) => skyLongWaveWm2(c, dewC[i] as number, cloudPct[i] as number))
}

function reflected(pct: number, spread: number): number {
  return Math.min(100, Math.max(0, pct >= 50 ? pct - spread : pct + spread))
}

function moister(rhPct: number, spread: number): number {
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
