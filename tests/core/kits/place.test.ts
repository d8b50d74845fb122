import { describe, expect, it } from 'vitest'
import { surroundingsOf } from '../../../src/core/kits/place.js'
import { emptyHour } from '../../../src/core/weather/hour.js'

const hourS = 3600
const base = { placeC: null, hours: [], hWM2K: 8, cartonM2KW: 0 } as const
const hours = [
  { ...emptyHour(0), airC: 10, windKmh: 0, sunWm2: 0 },
  { ...emptyHour(hourS), airC: 14, windKmh: 18, sunWm2: 0 },
  { ...emptyHour(2 * hourS), airC: 14, windKmh: 18, sunWm2: 494 }
]

describe('what is around a kit', () => {
  it('box and store: the temperature stated, in still air; nothing without one', () => {
    for (const place of ['box', 'store'] as const) {
      expect(surroundingsOf({ ...base, place, placeC: 30, hours })(hourS)).toEqual({ toC: 30, hWM2K: 8 })
      expect(surroundingsOf({ ...base, place, hours })(hourS)).toBeNull()
    }
  })

  it('deck: air between the hours, film of the hour’s wind (McAdams: 5.7 + 3.8·5 m/s), sun as warmth', () => {
    const deck = surroundingsOf({ ...base, place: 'deck', hours })
    expect(deck(hourS / 2)).toEqual({ toC: 12, hWM2K: expect.closeTo(24.7, 9) })
    // 0.3 · 494 / 24.7 = 6 K: the share is from memory.
    expect(deck(1.5 * hourS)!.toC).toBeCloseTo(20, 9)
    expect(surroundingsOf({ ...base, place: 'deck', placeC: 3, hours })(hourS / 2)).toEqual({ toC: 3, hWM2K: expect.closeTo(24.7, 9) })
    expect(surroundingsOf({ ...base, place: 'deck', placeC: 3 })(0)).toEqual({ toC: 3, hWM2K: 8 })
  })

  it('deck: nothing outside the forecast, over a gap of more than six hours, or where it has no air', () => {
    const deck = surroundingsOf({ ...base, place: 'deck', hours: [...hours, { ...emptyHour(3 * hourS) }, { ...emptyHour(9 * hourS), airC: 8 }] })
    for (const at of [-1, 2.5 * hourS, 9 * hourS + 1, Number.NaN]) expect(deck(at)).toBeNull()
    expect(surroundingsOf({ ...base, place: 'deck' })(0)).toBeNull()
  })

  it('never a smaller film than in still air, and a carton’s resistance in series', () => {
    const calm = surroundingsOf({ ...base, place: 'deck', hours: [hours[0]!, { ...hours[1]!, windKmh: 0 }] })
    expect(calm(1)!.hWM2K).toBe(8)
    expect(surroundingsOf({ ...base, place: 'box', placeC: 30, cartonM2KW: 0.125 })(0)!.hWM2K).toBeCloseTo(4, 12)
  })
})
