import { describe, expect, it } from 'vitest'
import { amount, amountPair, unitOfName } from '../../../src/bot/views/amount.js'
import type { How } from '../../../src/bot/views/how.js'

const zone = 'Europe/Berlin'
const en: How = { lang: 'en', units: 'metric', zone }
const enUs: How = { lang: 'en', units: 'us', zone }
const es: How = { lang: 'es', units: 'metric', zone }
const esUs: How = { lang: 'es', units: 'us', zone }
const fr: How = { lang: 'fr', units: 'metric', zone }
const frUs: How = { lang: 'fr', units: 'us', zone }

describe('amount', () => {
  // Conversions by definition: inch 25.4 mm, foot 0.3048 m, mile 1609.344 m (NIST SP 811). Sixteenths as on a tape: common practice, no source.
  it.each([
    [20, 'C', en, '20 °C'],
    [20, 'C', enUs, '68 °F'],
    [-17.25, 'C', fr, '-17,3\u00a0°C'],
    [2.4, 'K', en, '2.4 °C'],
    [2.4, 'K', enUs, '4.3 °F'],
    [2.4, 'K', es, '2,4\u00a0°C'],
    [40, 'km/h', en, '40 km/h'],
    [40.2336, 'km/h', enUs, '25 mph'],
    [33.3, 'km/h', fr, '33,3\u00a0km/h'],
    [60, '%', en, '60 %'],
    [0.5, '%', fr, '0,5\u00a0%'],
    [41, 'mm', en, '41 mm'],
    [41, 'mm', enUs, '1 5/8 in'],
    [38.1, 'mm', enUs, '1 1/2 in'],
    [12.7, 'mm', enUs, '1/2 in'],
    [25.4, 'mm', enUs, '1 in'],
    [0, 'mm', enUs, '0 in'],
    [0.2, 'mm', enUs, '0.008 in'],
    [-12.7, 'mm', enUs, '-1/2 in'],
    [2150, 'mm', en, '2150 mm'],
    [2150, 'mm', enUs, '7 ft 0 5/8 in'],
    [914.4, 'mm', enUs, '3 ft 0 in'],
    // As a tape is read: to the millimetre from 100 mm on, to a tenth below, where a sheet or a gap needs it. Common practice, no source.
    [4557.079633, 'mm', en, '4557 mm'],
    [357.079633, 'mm', en, '357 mm'],
    [99.94, 'mm', en, '99.9 mm'],
    [1.5, 'mm', en, '1.5 mm'],
    [12_345.6, 'mm', en, '12,346 mm'],
    [12_345.6, 'mm', fr, '12\u202f346\u00a0mm'],
    [12_345.6, 'mm', es, '12.346\u00a0mm'],
    [3.2, 'm', en, '3.2 m'],
    [3.2, 'm', enUs, '10 ft 6 in'],
    [3.048, 'm', enUs, '10 ft'],
    [0.1, 'm', enUs, '4 in'],
    [120, 'm', enUs, '394 ft'],
    [-3.2, 'm', enUs, '-10 ft 6 in'],
    [90, 'm2', en, '90 m²'],
    [90, 'm2', enUs, '969 ft²'],
    [60, 's', fr, '60\u00a0s'],
    [20, 'min', es, '20\u00a0min'],
    [135, 'min', en, '2 h 15 min'],
    [-180, 'min', en, '-3 h'],
    [2.5, 'm/min', enUs, '8.2 ft/min'],
    [1.5, 'C', esUs, '34.7\u00a0°F'],
    [1.5, 'C', frUs, '34,7\u00a0°F'],
    [7, null, en, '7'],
    [3, 'd', en, '3 d']
  ] as const)('%d %s', (value, unit, how, shown) => {
    expect(amount(value, unit, how)).toBe(shown)
  })
})

describe('amountPair', () => {
  it.each([
    [25.04, 25, 'km/h', en, '25.04 km/h', '25 km/h'],
    [25, 25, 'km/h', en, '25 km/h', '25 km/h'],
    [37.9, 38, 'mm', enUs, '1.492 in', '1.496 in'],
    [30, 38, 'mm', enUs, '1 3/16 in', '1 1/2 in'],
    [2.4, 3, 'K', enUs, '4.3 °F', '5.4 °F']
  ] as const)('%d and %d %s can be told apart', (value, limit, unit, how, first, second) => {
    expect(amountPair(value, limit, unit, how)).toEqual([first, second])
  })
})

describe('unitOfName', () => {
  it.each([
    ['airC', 'C'],
    ['dewMarginK', 'K'],
    ['rhPct', '%'],
    ['gustKmh', 'km/h'],
    ['lengthMm', 'mm'],
    ['reachM', 'm'],
    ['areaM2', 'm2'],
    ['openTimeS', 's'],
    ['daylightMin', 'min'],
    ['speedMMin', 'm/min'],
    ['count', null],
    ['kits', null]
  ] as const)('%s', (name, unit) => {
    expect(unitOfName(name)).toBe(unit)
  })
})
