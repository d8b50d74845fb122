import { describe, expect, test } from 'vitest'
import { refused, said, us } from './reader.js'

function airC(text: string, reader = us): unknown {
  const read = said(`air air ${text}`, { ...reader, units: 'metric' })
  return read.command === 'air' ? read.reading.airC : null
}

function widthM(text: string, reader = us): number {
  const read = said(`strip ${text}`, reader)
  return read.command === 'strip' ? read.strip.widthM : Number.NaN
}

function gapMm(text: string, reader = us): unknown {
  const read = said(`strip 2 m gap ${text}`, reader)
  return read.command === 'strip' ? read.strip.gapMm : null
}

describe('decimals, signs and units', () => {
  test.each([
    ['20', 20],
    ['20.5', 20.5],
    ['20,5', 20.5],
    ['-5', -5],
    ['−5', -5],
    ['0.125', 0.125],
    ['0,125', 0.125],
    ['20.1234', 20.1234],
    ['20.', 20],
    ['20,', 20],
    ['20;', 20],
    ['20!', 20],
    ['= 20', 20],
    [': 20', 20],
    ['020', 20],
    ['-0', 0],
    ['20C', 20],
    ['20 C', 20],
    ['20°C', 20],
    ['20 °C', 20],
    ['20 ° c', 20],
    ['20º C', 20],
    ['20°', 20],
    ['20\u00a0°C', 20],
    ['68F', 20],
    ['68 °F', 20],
    ['68 f', 20],
    ['½', 0.5],
    ['1/2', 0.5],
    ['20 1/2', 20.5],
    ['20-1/2', 20.5],
    ['20½', 20.5],
    ['20 ½', 20.5],
    ['-1/2', -0.5],
    ['-20 1/2', -20.5],
    ['⅛', 0.125],
    ['1⅜', 1.375],
    ['⅔', 0.666667],
    ['1⁄4', 0.25],
    ['32 F', 0],
    ['−40 F', -40]
  ])('air %s is %d °C', (text, value) => {
    expect(airC(text)).toBe(value)
  })

  // Exact by definition: mile 1609.344 m, nautical mile 1852 m, foot 0.3048 m, inch 25.4 mm (NIST SP 811, appendix B).
  test.each([
    ['wind 10', { windKmh: 10 }],
    ['wind 10 km/h', { windKmh: 10 }],
    ['wind 10kmh', { windKmh: 10 }],
    ['wind 5 m/s', { windKmh: 18 }],
    ['wind 10 mph', { windKmh: 16.09344 }],
    ['wind 10 kn', { windKmh: 18.52 }],
    ['wind 10 kt', { windKmh: 18.52 }],
    ['rh 50 %', { rhPct: 50 }],
    ['rh 50%', { rhPct: 50 }],
    ['sun 800', { sunWm2: 800 }],
    ['sun 800 W/m2', { sunWm2: 800 }],
    ['sun 800 W/m²', { sunWm2: 800 }]
  ])('%s', (text, reading) => {
    expect(said(`air ${text}`)).toMatchObject({ reading })
  })

  test.each([
    ['air 68', { airC: 20 }],
    ['air 20 C', { airC: 20 }],
    ['air 68°', { airC: 20 }],
    ['wind 10', { windKmh: 16.09344 }],
    ['rh 50', { rhPct: 50 }],
    ['deck 50', { substrateC: 10 }],
    ['dew 50', { dewPointC: 10 }]
  ])('bare in US units: %s', (text, reading) => {
    expect(said(`air ${text}`, us)).toMatchObject({ reading })
  })
})

describe('feet and inches are one value', () => {
  // 12 in = 1 ft = 0.3048 m, by definition.
  test.each([
    ["6'", 1.8288],
    ['6 ft', 1.8288],
    ['6ft', 1.8288],
    ['6′', 1.8288],
    ['6’', 1.8288],
    ['6\'6"', 1.9812],
    ['6\' 6"', 1.9812],
    ['6\'-6"', 1.9812],
    ['6’ 6”', 1.9812],
    ['6′6″', 1.9812],
    ['6 ft 6 in', 1.9812],
    ['6ft6in', 1.9812],
    ["6' 6", 1.9812],
    ['6\' 6 1/2"', 1.9939],
    ['6\'-6-1/2"', 1.9939],
    ['6\' 6½"', 1.9939],
    ["6'6''", 1.9812],
    ['6.5 ft', 1.9812],
    ['6½ ft', 1.9812],
    ['78 in', 1.9812],
    ['78"', 1.9812],
    ['2 m', 2],
    ['200 cm', 2],
    ['2000 mm', 2],
    ['6.5', 1.9812],
    ['6 1/2', 1.9812]
  ])('strip %s is %d m', (text, value) => {
    expect(widthM(text)).toBe(value)
  })

  test.each([
    ['1/4', 6.35],
    ['¼"', 6.35],
    ['1/4 in', 6.35],
    ['1 1/2', 38.1],
    ['1-1/2 in', 38.1],
    ['-1/4', -6.35],
    ['6 mm', 6],
    ['0.5 cm', 5]
  ])('gap %s is %d mm', (text, value) => {
    expect(gapMm(text)).toBe(value)
  })

  test('a number with another unit, or of twelve and more, is no inches of the feet before it', () => {
    expect(said('weld lead 100 ft 12 AWG', us)).toMatchObject({ statement: { lead: { leadM: 30.48 } } })
    expect(said('probe course 4 10 ft 14 in', us)).toMatchObject({ found: { distanceM: 3.048, lengthMm: 355.6 } })
    expect(refused('probe course 4 10 ft 2 in', us)).toMatchObject({ code: 'missing', word: 'length' })
  })
})

describe('areas, times, gauges', () => {
  test.each([
    ['40', 40],
    ['40 m2', 40],
    ['40 m²', 40],
    ['40m²', 40],
    ['500 ft2', 46.45152],
    ['500 ft²', 46.45152],
    ['500 sqft', 46.45152],
    ['500 sq ft', 46.45152]
  ])('laid %s is %d m²', (text, areaM2) => {
    expect(said(`laid ${text}`)).toMatchObject({ laid: { areaM2 } })
  })

  test('bare in US units', () => {
    expect(said('laid 500', us)).toMatchObject({ laid: { areaM2: 46.45152 } })
    expect(said('laid 500 robot 100 hand 10', us)).toMatchObject({ laid: { robotM: 30.48, handM: 3.048 } })
  })

  test.each([
    ['45', 45],
    ['45 s', 45],
    ['45s', 45],
    ['1 min', 60],
    ['0.5 min', 30]
  ])('foam %s is %d s', (text, gelS) => {
    expect(said(`foam ${text}`)).toMatchObject({ gelS })
  })

  // ASTM B258: AWG 12 is 0.0808 in across, 3.309 mm² (handbook tables give 3.31).
  test('gauges, bare in US units', () => {
    expect(said('weld lead 30 m 12 AWG')).toMatchObject({ statement: { lead: { leadM: 30, areaMm2: 3.308773 } } })
    expect(said('weld lead 100 12', us)).toMatchObject({ statement: { lead: { leadM: 30.48, areaMm2: 3.308773 } } })
    expect(said('weld lead 30 2.5')).toMatchObject({ statement: { lead: { leadM: 30, areaMm2: 2.5 } } })
    expect(refused('weld lead 30 m 41 AWG')).toMatchObject({ code: 'out-of-range' })
    expect(refused('weld lead 30 m 12.5 AWG')).toMatchObject({ code: 'bad-number' })
  })

  test('a unit also covers the bare numbers just before it', () => {
    expect(said('weld robot 41 39 40 mm film', us)).toMatchObject({ coupon: { widthsMm: [41, 39, 40] } })
    expect(said('weld robot 1.5 1 5/8 in film')).toMatchObject({ coupon: { widthsMm: [38.1, 41.275] } })
    expect(said('weld robot 41, 39, 40 mm film', us)).toMatchObject({ coupon: { widthsMm: [41, 39, 40] } })
    expect(said('weld robot 41 mm 1.5 film', us)).toMatchObject({ coupon: { widthsMm: [41, 38.1] } })
  })

  test('a count takes no fraction for itself', () => {
    expect(said('probe course 4 1/2 in', us)).toMatchObject({ found: { course: 4, lengthMm: 12.7 } })
    expect(said('probe course 4 1 1/2', us)).toMatchObject({ found: { course: 4, lengthMm: 38.1 } })
  })
})

describe('numbers that are not numbers', () => {
  test.each(['1,250', '1.250', '-1.250', '10.500', '999,999', '12,345 C'])('%s is ambiguous', (text) => {
    expect(refused(`air air ${text}`).code).toBe('ambiguous-number')
  })

  test.each(
    [
      '1,250.5',
      '1.250,5',
      '1.2.3',
      '1,2,3',
      '1/0',
      '0/0',
      '1/2/3',
      '1.5/2',
      '1.5½',
      '٢٠',
      '२०',
      '２０',
      '2٥',
      '20²',
      '.5',
      ',5',
      '-.5',
      '+5',
      '07:30',
      '10-15',
      '10–15',
      '2026-05-04',
      '20..5',
      '1 1/0',
      '12345678901234567',
      '20,5,',
      '5½½'
    ].filter((text) => text !== '20,5,')
  )('%s is a bad number', (text) => {
    expect(refused(`air air ${text}`).code).toBe('bad-number')
  })

  test('0.125 and 1234.567 are fine', () => {
    expect(airC('0.125')).toBe(0.125)
    expect(said('laid 1234.567')).toMatchObject({ laid: { areaM2: 1234.567 } })
  })

  test.each(['1 250', '1\u202f250'])('%s is two numbers, never 1250', (text) => {
    expect(refused(`laid ${text} m2`).code).toBe('duplicate')
  })

  test.each([
    ['air 20 %', 'wrong-unit'],
    ['air 20 mm', 'wrong-unit'],
    ['wind 20 m/min', 'wrong-unit'],
    ['rh 50 C', 'wrong-unit'],
    ['rh 50°', 'wrong-unit'],
    ['rain 0.2 mm', 'wrong-unit'],
    ['air 20 kelvin', 'unknown-word'],
    ['air 1e5', 'unknown-word'],
    ['wind 20 m/h', 'wrong-unit']
  ])('%s: %s', (text, code) => {
    expect(refused(`air ${text}`).code).toBe(code)
  })
})
