import { describe, expect, it } from 'vitest'
import { formulas, runFormula } from '../../../src/core/formulas/index.js'
import { airState } from '../../../src/core/physics/air.js'
import { round6 } from '../../../src/core/units.js'

const examples: Readonly<Record<string, readonly [Record<string, unknown>, Record<string, unknown>]>> = {
  // psychrolib documentation, docs/examples.md: dew point 21.309397 °C.
  air: [
    { airC: 25, rhPct: 80 },
    { dewPointC: expect.closeTo(21.309397, 3), frostPointC: null }
  ],
  // MetPy test suite: 35 °C, 70 % is 50.3405 °C; −5 °C at 35 m/s is −18.9357 °C.
  'heat-index': [{ airC: 35, rhPct: 70 }, { heatIndexC: expect.closeTo(50.3405, 2) }],
  'wind-chill': [{ airC: -5, windKmh: 126 }, { windChillC: expect.closeTo(-18.9357, 3) }],
  // thermofeel test suite, from the reference C code of Liljegren et al. 2008: 306.559802 K.
  wbgt: [
    { airC: 35, rhPct: 40, pressureHpa: 1013, windKmh: 3.6, sunWm2: 800, directFraction: 0.7, cosZenith: 0.9 },
    { wbgtC: expect.closeTo(33.41, 1) }
  ],
  // Berdahl & Martin 1984; McAdams 1954; steady balance solved apart from this code (scipy).
  sky: [
    { airC: 20, dewPointC: 10, cloudPct: 0 },
    { emissivity: expect.closeTo(0.7743, 4), skyC: expect.closeTo(1.84, 1) }
  ],
  convection: [{ windKmh: 18 }, { hWm2K: 24.7 }],
  surface: [
    { airC: 25, dewPointC: 15, windKmh: 7.2, sunWm2: 800, cloudPct: 0, absorptance: 0.9, emissivity: 0.9 },
    { surfaceC: expect.closeTo(57.74, 2) }
  ],
  // FAO-56 eq. 53 without resistance, computed apart from this code: 0.2779 and 0.5588 mm/h.
  evaporation: [{ airC: 15, rhPct: 70, windKmh: 7.2, netWm2: 277.777778, groundWm2: 27.777778 }, { mmPerHour: expect.closeTo(0.2779, 3) }],
  drying: [{ filmMm: 0.5, mmPerHour: 0.5588 }, { min: expect.closeTo(53.69, 1) }],
  // NREL SPA web calculator, 2 August 2015: rise 05:00:27; set corrected to 19:12:55, see tests/core/physics/sun.test.ts.
  sun: [
    { lat: 39.742476, lon: -105.1786, at: '2015-08-02T12:00:00-07:00' },
    { sunriseAt: '2015-08-02T12:00:29Z', sunsetAt: '2015-08-03T02:12:55Z' }
  ],
  // Çengel, example 4-2: 43860 s to 25 °C, lumped, so here with a conductivity that leaves no difference inside; see tests/core/kits/cylinder.test.ts.
  cylinder: [
    { radiusM: 0.15, heightM: 1.7, rhoKgM3: 996, cJKgK: 4178, kWMK: 1e6, hWM2K: 8, exposedEnds: 2, fromC: 37, toC: 20, targetC: 25 },
    { meanMin: expect.closeTo(43871 / 60, 1) }
  ],
  // Common practice; temperatures invented.
  'open-time': [{ substrateC: 35 }, { openTimeS: 30 }],
  reach: [{ openTimeS: 90, handOverS: 10, rollS: 20, sprayMs: 0.3, unrollMs: 0.2, how: 'stop' }, { reachM: 12 }],
  // −ln 0.1, exact.
  rate: [
    { voids: 0, metres: 100 },
    { per100m: 0, per100mUpper90: round6(Math.LN10) }
  ],
  // NIST/SEMATECH e-Handbook, 6.3.2.2, from memory.
  chart: [
    { widthsMm: [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1] },
    { meanMm: 50.81, lowMm: expect.closeTo(45.8159, 3), highMm: expect.closeTo(55.8041, 3) }
  ],
  convert: [{ value: 23, from: 'mph', to: 'km/h' }, { value: 37.014912 }],
  // Ohm's law by hand, IEC 60228 class 5.
  voltage: [{ volts: 230, watts: 3680, leadM: 50, areaMm2: 2.5 }, { toolV: round6((230 * 14.375) / 15.173) }],
  lift: [{ kgM2: 10.197162, cp: -1 }, { windKmh: expect.closeTo(45.536798, 4) }],
  fasteners: [{ legM: 3.3, spacingMm: 300 }, { count: 11 }],
  courses: [{ widthM: 24, sheetM: 2, lapMm: 80 }, { count: 13 }],
  strip: [
    { widthM: 2, gapMm: 6 },
    { lengthMm: 2150, landMm: 72, weldPerimeterMm: 4557.079633, minWidthMm: 38, count: null }
  ],
  // EN 1991-1-4 figure 7.6, computed apart from this code: tests/truth/wind-zones.json, win-040.
  zones: [
    { standard: 'en', widthM: 60, depthM: 32, heightM: 8 },
    { windOnWidth: { eM: 16, fAlongM: 4, fDeepM: 1.6, hDeepM: 8, F: 12.8, G: 83.2, H: 384, I: 1440 } }
  ]
}

/** `KEY=VALUE` of a shell: the same inputs as text. */
function asText(inputs: Record<string, unknown>): Record<string, string> {
  return Object.fromEntries(Object.entries(inputs).map(([key, value]) => [key, Array.isArray(value) ? value.join(',') : String(value)]))
}

describe('formulas', () => {
  it('are known by their own names, each with an example here', () => {
    for (const [name, formula] of Object.entries(formulas)) expect(formula.name).toBe(name)
    expect(Object.keys(examples).sort()).toEqual(Object.keys(formulas).sort())
  })

  it.each(Object.entries(examples))('%s, from JSON and from a shell', (name, [inputs, result]) => {
    const answer = runFormula(name, Object.freeze(inputs))

    expect(answer).toMatchObject({ ok: true, name, result })
    expect(runFormula(name, asText(inputs))).toEqual(answer)
    expect(answer).toHaveProperty('source')
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer)
  })

  it.each(Object.entries(examples))('%s gives every input, and answers the same to its own echo', (name, [inputs]) => {
    const answer = runFormula(name, inputs)
    if (!answer.ok) throw new Error(answer.message)

    expect(Object.keys(answer.inputs).sort()).toEqual(Object.keys(formulas[name]?.inputs ?? {}).sort())
    expect(runFormula(name, answer.inputs)).toMatchObject({ result: answer.result })
  })

  it.each(Object.values(formulas))('$name states its source and its ranges', (formula) => {
    expect(formula.source.length).toBeGreaterThan(10)
    for (const key of Object.keys(formula.inputs)) expect(formula.range).toContain(key)
  })

  it('are the functions that the rules use', () => {
    const state = airState({ airC: 5, rhPct: 60, pressureHpa: 900 })
    const answer = runFormula('air', { airC: 5, rhPct: 60, pressureHpa: 900 })
    expect(answer).toMatchObject({
      result: Object.fromEntries(Object.entries(state).map(([key, value]) => [key, value === null ? null : round6(value)]))
    })
  })
})

describe('every number input', () => {
  const cases = Object.values(formulas).flatMap(({ name, inputs }) =>
    Object.entries(inputs).flatMap(([key, input]) => (input.kind === 'number' ? [{ name, key, input }] : []))
  )

  it.each(cases)('$name $key is refused beyond its ends and when it is no number', ({ name, key, input }) => {
    const given = { ...examples[name]?.[0] }
    const refused = (value: unknown) => runFormula(name, { ...given, [key]: value })

    for (const value of [input.min - 1, input.max + 1]) expect(refused(value)).toMatchObject({ ok: false, code: 'out-of-range', word: key })
    if (input.above) expect(refused(input.min)).toMatchObject({ code: 'out-of-range', word: key })
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 'warm', '', '1,5', '1.2.3', '0x10', true, {}, []]) {
      expect(refused(value)).toMatchObject({ ok: false, code: 'bad-number' })
    }
  })

  it.each(cases)('$name $key is answered or refused at its ends, never NaN', ({ name, key, input }) => {
    for (const value of [input.above ? input.min + 1e-9 : input.min, input.max]) {
      const answer = runFormula(name, { ...examples[name]?.[0], [key]: value })
      if (answer.ok) for (const number of Object.values(answer.result)) expect(number).not.toBeNaN()
    }
  })
})

const kit = { radiusM: 0.15, heightM: 0.45, rhoKgM3: 1100, cJKgK: 1900, kWMK: 0.18, hWM2K: 8, exposedEnds: 2, fromC: 5, toC: 25 }

describe('refusals', () => {
  it.each([
    ['thermometer', {}, 'unknown-command', 'thermometer'],
    ['constructor', {}, 'unknown-command', 'constructor'],
    ['', {}, 'unknown-command', ''],
    ['air', { airC: 20 }, 'missing', 'rhPct'],
    ['air', { airC: 20, rhPct: null }, 'missing', 'rhPct'],
    ['air', { airC: 20, rhPct: 50, toString: 1 }, 'unknown-word', 'toString'],
    ['air', { airC: 20, rhPct: 50, pressureHPa: 1000 }, 'unknown-word', 'pressureHPa'],
    ['air', { airC: '20C', rhPct: 50 }, 'bad-number', '20C'],
    ['rate', { voids: 1.5, metres: 100 }, 'bad-number', '1.5'],
    ['chart', { widthsMm: [] }, 'missing', 'widthsMm'],
    ['chart', { widthsMm: '41,,wide' }, 'bad-number', 'wide'],
    ['chart', { widthsMm: [41, null] }, 'bad-number', 'null'],
    ['chart', { widthsMm: [41, -1] }, 'out-of-range', 'widthsMm'],
    ['chart', { widthsMm: new Array(10_001).fill(40) }, 'out-of-range', 'widthsMm'],
    ['sun', { lat: 50, lon: 8, at: '2026-06-21T12:00:00' }, 'bad-number', '2026-06-21T12:00:00'],
    ['sun', { lat: 50, lon: 8, at: 1_800_000_000 }, 'bad-number', '1800000000'],
    ['sun', { lat: 50, lon: 8, at: '1850-06-21T12:00:00Z' }, 'out-of-range', 'at'],
    ['reach', { openTimeS: 90, sprayMs: 0.3, how: 'run' }, 'unknown-word', 'run'],
    ['reach', { openTimeS: 90, sprayMs: 0.3, how: 'follow' }, 'missing', 'lagS'],
    ['convert', { value: 1, from: 'furlong', to: 'm' }, 'unknown-word', 'furlong'],
    ['convert', { value: 1, from: 'mph', to: 'C' }, 'wrong-unit', 'C'],
    ['convert', { value: 41, from: 'AWG', to: 'mm2' }, 'out-of-range', 'value'],
    ['voltage', { volts: 230, watts: 3680, leadM: 50 }, 'missing', 'areaMm2'],
    ['voltage', { volts: 230, watts: 3680, leadM: 50, areaMm2: 2.5, awg: 12 }, 'inconsistent', 'awg'],
    ['cylinder', kit, 'missing', 'afterMin'],
    ['cylinder', { ...kit, afterMin: 60, targetC: 20 }, 'inconsistent', 'targetC'],
    ['cylinder', { ...kit, exposedEnds: 1.5, afterMin: 60 }, 'bad-number', '1.5'],
    ['lift', { kgM2: 2, cp: 0 }, 'out-of-range', 'cp'],
    ['fasteners', { legM: 3, spacingMm: 200, firstMm: 150 }, 'out-of-range', 'firstMm'],
    ['courses', { widthM: 24, sheetM: 2, lapMm: 2000 }, 'out-of-range', 'lapMm'],
    ['strip', { widthM: 2, cornerRadiusMm: 80 }, 'out-of-range', 'cornerRadiusMm']
  ])('%s %j is %s', (name, inputs, code, word) => {
    expect(runFormula(name, inputs)).toMatchObject({ ok: false, code, word, message: expect.stringMatching(/./) })
  })
})

describe('what is special', () => {
  it('there is no reach to give where there is no limit', () => {
    expect(runFormula('reach', { openTimeS: 90, rollS: 20, lagS: 10, sprayMs: 0.3, unrollMs: 0.3, how: 'follow' })).toMatchObject({
      result: { reachM: null }
    })
  })

  it('a gauge stands for its area', () => {
    const byGauge = runFormula('voltage', { volts: 120, watts: 1600, leadM: 30, awg: '12' })
    const byArea = runFormula('voltage', { volts: 120, watts: 1600, leadM: 30, areaMm2: 3.308774 })
    expect(byGauge.ok && byArea.ok && round6(Number(byGauge.result.toolV) - Number(byArea.result.toolV))).toBeCloseTo(0, 4)
  })

  it.each([
    ['2015-08-02T00:30:00-07:00', 'the date as written with an offset'],
    ['2015-08-02T12:00:00Z', 'with Z the date by longitude'],
    ['2015-08-03T02:00:00Z', 'with Z, past midnight in Greenwich, still the evening there']
  ])('the sun of %s: %s', (at) => {
    expect(runFormula('sun', { lat: 39.742476, lon: -105.1786, at })).toMatchObject({ result: { sunriseAt: '2015-08-02T12:00:29Z' } })
  })

  it('the sun at midnight on the meridian is of the day that begins', () => {
    expect(runFormula('sun', { lat: -35, lon: 0, at: '1996-07-05T00:00:00Z' })).toMatchObject({
      result: { sunriseAt: expect.stringMatching(/^1996-07-05T07:08/) }
    })
  })

  it('has no rise where the sun stays up', () => {
    expect(runFormula('sun', { lat: 69.65, lon: 18.96, at: '2026-06-21T10:00:00Z' })).toMatchObject({ result: { sunriseAt: null, sunsetAt: null } })
  })

  it('strips are counted on a roll', () => {
    expect(runFormula('strip', { widthM: 2, rollM: 20 })).toMatchObject({ result: { count: 9 } })
  })

  it('reads a typed minus', () => {
    expect(runFormula('wind-chill', { airC: '−5', windKmh: '126' })).toMatchObject({ ok: true, inputs: { airC: -5 } })
  })
})
