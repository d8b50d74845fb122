import { describe, expect, test } from 'vitest'
import type { Lang } from '../../../src/bot/answer.js'
import { readWords } from '../../../src/bot/words/read.js'
import { metric, refused, said, us } from './reader.js'

/** Words of tired people: no source, what was typed when the bot was tried. */
describe('units spelled out or glued', () => {
  test.each([
    ['foam 45 seconds', 'foam 45 s'],
    ['espuma 45 segundos parejo', 'foam 45 s even'],
    ['mousse 45 secondes', 'foam 45 s'],
    ['air 68 degrees F', 'air 68 F'],
    ['air 68 degrees fahrenheit', 'air 68 F'],
    ['aire 20 grados hr 50', 'air 20 rh 50'],
    ['aire 20 grados centígrados', 'air 20 C'],
    ['air 20 degrés', 'air 20'],
    ['air rh 50 percent wind 10 miles per hour', 'air rh 50 % wind 10 mph'],
    ['colocado 42 metros cuadrados', 'laid 42 m2'],
    ['posé 42 mètres carrés', 'laid 42 m2'],
    ['POSE 42 METRES CARRES', 'laid 42 m2'],
    ['laid 420 square feet', 'laid 420 ft2'],
    ['bond 200 lb foam', 'bond 200 lbf foam'],
    ['fire heat 60 minutes', 'fire heat 60 min'],
    ['repasar hilera 4 traslape 3 metros 40 milímetros', 'probe course 4 lap 3 m 40 mm'],
    ['spray air20 deck18C rh60', 'spray air 20 deck 18 C rh 60'],
    ['air20 rh50', 'air 20 rh 50'],
    ['weld robot 41, 40 and 42 mm film', 'weld robot 41 40 42 mm film'],
    ['soldar robot 41, 40 y 42 mm película', 'weld robot 41 40 42 mm film'],
    ['souder robot 41, 40 et 42 mm film', 'weld robot 41 40 42 mm film']
  ])('%s is %s', (typed, plain) => {
    expect(said(typed)).toEqual(said(plain))
  })

  test('what a digit makes a name of stays a name', () => {
    expect(said('kit kit7 24')).toMatchObject({ kit: { name: 'KIT7' } })
    expect(refused('spray dry20')).toMatchObject({ code: 'unknown-word' })
    expect(refused('air temperature20')).toMatchObject({ code: 'unknown-word', word: 'temperature20' })
  })
})

describe('days and times', () => {
  test.each([
    ['kit K7 exp 31/12/2026', '2026-12-31'],
    ['kit K7 exp 12/31/2026', '2026-12-31'],
    ['kit K7 exp 31.12.2026.', '2026-12-31'],
    ['kit K7 vence 2026/12/31', '2026-12-31'],
    ['kit K7 exp 05/05/2027', '2027-05-05']
  ])('%s', (text, date) => {
    expect(said(text)).toMatchObject({ kit: { data: { expiresOn: date } } })
  })

  test('two days, or none, are refused with how a day is written', () => {
    const either = { code: 'bad-number', word: '05/06/2026', detail: { hint: 'eitherDate', said: ['2026-06-05', '2026-05-06'] } }
    expect(refused('kit K7 exp 05/06/2026')).toMatchObject(either)
    expect(refused('day 05/06/2026')).toMatchObject(either)
    for (const none of ['31/02/2026', '13/13/2026', '31/12/26', '2026/31/12'])
      expect(refused(`kit K7 exp ${none}`)).toMatchObject({ code: 'bad-number', word: none, detail: { hint: 'date' } })
  })

  // The clock of the reader: Monday 2026-05-04.
  test.each([
    ['day monday', '2026-05-04'],
    ['day wednesday', '2026-05-06'],
    ['día miércoles', '2026-05-06'],
    ['jour dimanche', '2026-05-10']
  ])('%s is the coming one', (text, date) => {
    expect(said(text)).toEqual({ command: 'day', date })
  })

  test.each([
    ['day record wednesday', '2026-04-29'],
    ['day sunday record', '2026-05-03'],
    ['jour rapport lundi', '2026-05-04'],
    ['day record yesterday', '2026-05-03']
  ])('%s is the last one', (text, date) => {
    expect(said(text)).toMatchObject({ command: 'day record', date })
  })

  test('hours by the half-day and by h', () => {
    for (const typed of ['7am-5pm', '07:00-17:00', '7h-17h', '7AM-5:00pm'])
      expect(said(`site hours ${typed}`)).toMatchObject({ change: { hours: '07:00-17:00' } })
    expect(said('site hours 12am-12pm')).toMatchObject({ change: { hours: '00:00-12:00' } })
    expect(said('site morning 5h30')).toMatchObject({ change: { morning: '05:30' } })
    for (const typed of ['7-17', '13pm-14pm', '0am-5pm', '7am-5'])
      expect(refused(`site hours ${typed}`)).toMatchObject({ code: 'bad-number', detail: { hint: 'clock' } })
  })
})

describe('places and names', () => {
  const chicago = { site: { name: 'north', lat: 41.9, lon: -87.6 } }

  test.each([
    '41.9,-87.6',
    '41.9 N, 87.6 W',
    '41.9N 87.6W',
    'N 41.9 W 87.6',
    '41.9° N, 87.6° W',
    '41.9°,-87.6°',
    '87.6 W, 41.9 N',
    '41.9 norte 87.6 oeste',
    '41.9 N 87.6 O',
    '41,9 N 87,6 O',
    "41°54'N 87°36'0\"W",
    '41° 54′ 0″ N, 87° 36′ 0″ W'
  ])('%s', (place) => {
    expect(said(`start north at ${place} zone America/Chicago`)).toMatchObject(chicago)
    expect(said(`site new north at ${place} zone America/Chicago`)).toMatchObject({ lat: 41.9, lon: -87.6 })
  })

  test.each(['-41.9 S, 87.6 W', '41.9 N, 87.6 N', "41°61'N 87°36'W", '41.9 N', '41.9 N, 87.6'])(
    '%s is none, and how it is written is said',
    (place) => {
      expect(refused(`start north at ${place} zone America/Chicago`)).toMatchObject({ code: 'bad-number', detail: { hint: 'place' } })
    }
  )

  test('a town has no coordinates here', () => {
    expect(refused('start north at Chicago zone America/Chicago')).toMatchObject({ code: 'unknown-word', word: 'Chicago', detail: { hint: 'place' } })
    expect(refused('start north at zone America/Chicago')).toMatchObject({ code: 'missing', detail: { hint: 'place' } })
  })

  test.each([
    ['North Roof 2', 'north-roof-2'],
    ['Azotea Nº 3', 'azotea-n-3'],
    ['Dach_2', 'dach-2'],
    ['École', 'ecole']
  ])('%s could be %s', (typed, name) => {
    const part = { code: 'unknown-word', word: typed, detail: { label: 'site', hint: 'siteName', nearest: name } }
    expect(refused(`start ${typed} at 41.9,-87.6 zone America/Chicago`)).toMatchObject(part)
    expect(said(`start ${name} at 41.9,-87.6 zone America/Chicago`)).toMatchObject({ site: { name } })
  })
})

test('a roof is given to sheets, no site keeps one', () => {
  const part = { code: 'unknown-word', word: '80x120', detail: { hint: 'siteRoof', nearest: 'sheets 80x120' } }
  expect(refused('site roof 80x120')).toMatchObject(part)
})

describe('what is offered', () => {
  test.each([
    ['kit 7 is 24 degrees', 'kit K7 24 degrees'],
    ['wind 25 km/h gust 40 km/h', 'air wind 25 km/h gust 40 km/h'],
    ['void 1 is fixed', 'probe 1 fixed'],
    ['iso 24 resin 23', 'kit iso 24 resin 23'],
    ['robot 41 mm film', 'weld robot 41 mm film']
  ])('for %s: %s, which reads', (typed, offer) => {
    expect(refused(typed).detail).toMatchObject({ offer })
    expect(said(offer)).toBeTruthy()
  })

  test('nothing for a question, nor for what would not read', () => {
    for (const typed of ['is kit 7 at 24?', 'wind 25 km/h bananas', 'void 1 is lovely']) expect(refused(typed).detail.offer).toBeUndefined()
  })

  test('a bare number that would be a °F', () => {
    expect(refused('spray air 68 deck 66')).toMatchObject({ code: 'out-of-range', detail: { hint: 'fahrenheit' } })
    for (const [typed, reader] of [
      ['spray air 68 C', metric],
      ['spray air 200', metric],
      ['spray air 200', us]
    ] as const)
      expect(refused(typed, reader).detail.hint).toBeUndefined()
  })

  const near = (text: string, lang: Lang) => {
    const read = readWords(text, { ...metric, lang })
    return read.ok ? null : read.refusal.detail.nearest
  }

  test('only words of the person’s language', () => {
    expect(near('mouse', 'en')).not.toContain('mousse')
    expect(near('mouse', 'fr')).toContain('mousse')
    expect(near('spray air 20 serre', 'en')).not.toBe('serré')
  })

  test('where most of a message is in another language, of that one', () => {
    expect(near('rociar aire 20 hr 50 limpi', 'en')).toBe('limpio')
    expect(near('pulvériser air 20 serr', 'en')).toBe('serré')
  })
})

describe('nouns and little words', () => {
  test.each([
    ["pulvériser air 20 pas d'orage", 'spray air 20 no thunder'],
    ['pulvériser air 20 pas d’orages', 'spray air 20 no thunder'],
    ['sello 12 m cinta', 'seal 12 m tape'],
    ['etancheite', 'seal'],
    ['sonda hilada 4 junta 3 m 40 mm', 'probe course 4 end 3 m 40 mm'],
    ['sonde rang 4 about 3 m 40 mm', 'probe course 4 end 3 m 40 mm'],
    ['puestos 42 m2', 'laid 42 m2'],
    ['rociar relajadas', 'spray relaxed'],
    ['trousse K7 boite', 'kit K7 box'],
    ['combien de rouleaux pour 24 x 36 m', 'sheets 24 x 36 m'],
    ['cuántos rollos para 24 x 36 m', 'sheets 24 x 36 m'],
    ['how many rolls for 24x36 m', 'sheets 24 x 36 m']
  ])('%s is %s', (typed, plain) => {
    expect(said(typed)).toEqual(said(plain))
  })

  test('a question about metres keeps them where feet are usual', () => {
    expect(said('how many rolls for 24x36 m?', us)).toEqual(said('sheets 24 x 36 m', us))
    expect(said('how many rolls for 24x36 m?', us)).not.toEqual(said('sheets 24 x 36', us))
  })
})
