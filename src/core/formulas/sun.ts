import { localDate, toIso } from '../instant.js'
import { sunPosition, sunTimes } from '../physics/sun.js'
import { formula, type WrittenInstant } from './formula.js'

/** Years in which the library's series hold: 1900 up to 2150. */
const years = { min: -2_208_988_800, max: 5_680_281_599 } as const

export const sun = formula({
  name: 'sun',
  inputs: {
    lat: { kind: 'number', unit: '°', min: -90, max: 90 },
    lon: { kind: 'number', unit: '° east', min: -180, max: 180 },
    at: { kind: 'instant', ...years }
  },
  source:
    'Meeus, Astronomical Algorithms, as in suncalc 2; height with refraction, rise and set at −0.833°; the day is that of the offset in `at`, with Z that of the nautical zone of the longitude',
  run({ lat, lon, at }) {
    const zone = clock(at, lon)
    const { sunriseAt, sunsetAt } = sunTimes(lat, lon, localDate(at.at, zone), zone)
    const iso = (instant: number | null) => (instant === null ? null : toIso(instant))
    return { ...sunPosition(lat, lon, at.at), sunriseAt: iso(sunriseAt), sunsetAt: iso(sunsetAt) }
  }
})

/** There is no site here whose zone would say what "that day" is: the offset as written, else whole hours by longitude. */
function clock({ offsetMin }: WrittenInstant, lon: number): string {
  const minutes = offsetMin === 0 ? Math.round(lon / 15) * 60 : offsetMin
  const size = Math.abs(minutes)
  return `UTC${minutes < 0 ? '-' : '+'}${Math.floor(size / 60)}:${String(size % 60).padStart(2, '0')}`
}
