/** A cylinder as in `src/core/kits`, conductivity as given (mixing included). */
export interface FinerBody {
  readonly radiusM: number
  readonly heightM: number
  readonly rhoKgM3: number
  readonly cJKgK: number
  readonly kWMK: number
  readonly exposedEnds: number
}

/**
 * An independent solver for the tests: explicit (forward Euler at a quarter of its stability limit), even grid of nodes at the faces of
 * the control volumes' middles, 40 by 30 cells over the whole height, film resistance in series with half a cell. Nothing of the engine's own.
 * Gives the volume mean, °C, at each whole hour.
 */
export function finerMeans(body: FinerBody, fromC: number, hours: number, around: (s: number) => { toC: number; hWM2K: number }): readonly number[] {
  const [nr, nz] = [40, body.exposedEnds === 0 ? 1 : 30]
  const [dr, dz] = [body.radiusM / nr, body.heightM / nz]
  const heat = body.rhoKgM3 * body.cJKgK
  const stepS = Math.min(60, 0.25 / ((body.kWMK / heat) * (2 / dr ** 2 + (nz > 1 ? 2 / dz ** 2 : 0))))
  const perHour = Math.ceil(3600 / stepS)
  const dt = 3600 / perHour
  let now = Array.from({ length: nr * nz }, () => fromC)
  const means: number[] = [fromC]
  for (let step = 0; step < hours * perHour; step += 1) {
    const { toC, hWM2K } = around((step + 0.5) * dt)
    const side = 1 / (1 / hWM2K + dr / 2 / body.kWMK)
    const end = 1 / (1 / hWM2K + dz / 2 / body.kWMK)
    const next = [...now]
    for (let z = 0; z < nz; z += 1) {
      for (let r = 0; r < nr; r += 1) {
        const at = z * nr + r
        const c = now[at]!
        const volume = Math.PI * (((r + 1) * dr) ** 2 - (r * dr) ** 2) * dz
        const flat = volume / dz
        let watts = 0
        if (r > 0) watts += ((2 * Math.PI * r * dr * dz * body.kWMK) / dr) * (now[at - 1]! - c)
        if (r < nr - 1) watts += ((2 * Math.PI * (r + 1) * dr * dz * body.kWMK) / dr) * (now[at + 1]! - c)
        else watts += 2 * Math.PI * body.radiusM * dz * side * (toC - c)
        if (z > 0) watts += ((flat * body.kWMK) / dz) * (now[at - nr]! - c)
        else if (body.exposedEnds === 2) watts += flat * end * (toC - c)
        if (z < nz - 1) watts += ((flat * body.kWMK) / dz) * (now[at + nr]! - c)
        else if (body.exposedEnds > 0) watts += flat * end * (toC - c)
        next[at] = c + (watts * dt) / (heat * volume)
      }
    }
    now = next
    if ((step + 1) % perHour === 0) means.push(meanOf(now, nr))
  }
  return means
}

function meanOf(cells: readonly number[], nr: number): number {
  let sum = 0
  let weight = 0
  for (const [at, c] of cells.entries()) {
    const ring = 2 * (at % nr) + 1
    sum += ring * c
    weight += ring
  }
  return sum / weight
}
