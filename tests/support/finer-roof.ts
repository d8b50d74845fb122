import { getPosition } from 'suncalc'
import type { Layer } from '../../src/core/limits/sheet.js'
import type { Hour } from '../../src/core/weather/hour.js'

/**
 * A second solver of the same roof, for the tests alone: explicit, half-second steps, cells of 2.5 mm, the surface a half cell with
 * its mass, its own formulas. Vapour: Magnus form of WMO-No. 8, annex 4.B. Sky: Berdahl & Martin 1984 with the cloud factor of Clark &
 * Allen 1978; convection: McAdams 1954; sun: Kasten & Czeplak 1980 (coefficients from memory). Evaporation: FAO-56 eq. 8 and 53.
 */
export interface FinerRoof {
  readonly lat: number
  readonly lon: number
  readonly heightM: number
  readonly absorptance: number
  readonly emissivity: number
  readonly filmMaxMm: number
  readonly layer: Layer
  /** What the truth has beyond the formulas: factors on convection and, by hour, on the sun. */
  readonly convection: number
  readonly sun: (hour: number) => number
}

const dt = 0.5
const everyS = 300
const water = (c: number) => 611.2 * Math.exp((17.62 * c) / (243.12 + c))
const iceP = (c: number) => 611.2 * Math.exp((22.46 * c) / (272.62 + c))

/** Surface °C and film mm every 5 min over hours without a gap, in order, an hour apart. */
export function finerRoof(hours: readonly Hour[], roof: FinerRoof): { readonly startAt: number; readonly c: number[]; readonly filmMm: number[] } {
  const { layer, emissivity, absorptance, filmMaxMm } = roof
  const n = Math.round(layer.thicknessM / 0.0025)
  const dx = layer.thicknessM / n
  const heat = layer.rhoKgM3 * layer.cJKgK * dx
  const g = layer.kWMK / dx
  const t = Float64Array.from({ length: n + 1 }, (_, i) => 12 + (8 * i) / n)
  const startAt = hours[0]?.at ?? 0
  const c: number[] = []
  const filmMm: number[] = []
  let film = 0
  for (let k = 0; k + 1 < hours.length; k += 1) {
    const [a, b] = [hours[k] as Hour, hours[k + 1] as Hour]
    const mix = (name: 'airC' | 'dewPointC' | 'windKmh' | 'cloudPct', share: number) => (a[name] ?? 0) * (1 - share) + (b[name] ?? 0) * share
    for (let part = 0; part < 3600; part += 60) {
      if (part % everyS === 0) {
        c.push(t[0] as number)
        filmMm.push(film)
      }
      const share = (part + 30) / 3600
      const air = mix('airC', share)
      const dew = mix('dewPointC', share)
      const cloud = mix('cloudPct', share)
      const altitude = Math.sin((getPosition(new Date((a.at + part + 30) * 1000), roof.lat, roof.lon).altitude * Math.PI) / 180)
      const sun = roof.sun(k) * Math.max(0, 910 * altitude - 30) * (1 - 0.75 * (cloud / 100) ** 3.4)
      const tenths = cloud / 10
      const clear = 0.711 + 0.0056 * dew + 0.000073 * dew * dew
      const sky = Math.min(1, clear * (1 + 0.0224 * tenths - 0.0035 * tenths ** 2 + 0.00028 * tenths ** 3)) * 5.670374e-8 * (air + 273.15) ** 4
      const wind = (mix('windKmh', share) / 3.6) * 27 ** 0.14 * (roof.heightM / 370) ** 0.22
      const h = roof.convection * (5.7 + 3.8 * wind)
      const vapour = water(dew)
      const rain = (b.rainMm ?? 0) / 3600
      for (let s = 0; s < 60; s += dt) {
        const top = t[0] as number
        let kg = (h * (vapour - (top < 0 ? iceP(top) : water(top)))) / (0.665e-3 * 101325 * 2.45e6)
        film += rain * dt
        if (film + kg * dt < 0) kg = -film / dt
        film = Math.min(filmMaxMm, Math.max(0, film + kg * dt))
        const flow = absorptance * sun + emissivity * (sky - 5.670374e-8 * (top + 273.15) ** 4) + h * (air - top) + (top < 0 ? 2.784e6 : 2.45e6) * kg
        let above = g * (top - (t[1] as number))
        t[0] = top + ((flow - above) * dt) / (heat / 2)
        for (let i = 1; i < n; i += 1) {
          const below = g * ((t[i] as number) - (t[i + 1] as number))
          t[i] = (t[i] as number) + ((above - below) * dt) / heat
          above = below
        }
        t[n] = (t[n] as number) + ((above - 10 * ((t[n] as number) - 20)) * dt) / (heat / 2)
      }
    }
  }
  return { startAt, c, filmMm }
}
