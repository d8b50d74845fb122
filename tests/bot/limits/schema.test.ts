import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { parseSheet } from '../../../src/bot/limits/schema.js'
import { commonPractice, commonPracticeUs } from '../../../src/core/limits/common-practice.js'
import { resolveSheet } from '../../../src/core/limits/resolve.js'
import type { LimitsSheet } from '../../../src/core/limits/sheet.js'

const site = { id: 'site', version: 1, title: 'Site', units: 'metric' }
const others: Readonly<Record<string, unknown>> = {
  'common-practice': commonPractice,
  'common-practice-us': commonPracticeUs,
  a: { ...site, id: 'a', extends: 'b' },
  b: { ...site, id: 'b', extends: 'a' },
  self: { ...site, id: 'self', extends: 'self' },
  bad: { ...site, id: 'bad', limits: { humidityPct: { cautionAbove: 120, basis: 'x' } } },
  warm: { ...site, id: 'warm', extends: 'common-practice', limits: { kitTemperatureC: { min: 23, cautionBelow: 24, basis: 'site' } } }
}
const find = (id: string) => others[id] ?? null

function sheetOf(raw: unknown): LimitsSheet {
  const parsed = parseSheet(raw, find)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.sheet
}

function problems(raw: unknown): string[] {
  const parsed = parseSheet(raw, find)
  return parsed.ok ? [] : parsed.problems.map(({ path }) => path)
}

describe('a sheet that is right', () => {
  it('built in: the same hash however it was come by', () => {
    expect(sheetOf(commonPractice)).toEqual(resolveSheet(commonPractice))
    expect(sheetOf(commonPracticeUs)).toEqual(resolveSheet(commonPracticeUs))
  })

  it('is common practice in what it leaves out', () => {
    const sheet = sheetOf(site)
    expect(sheet.limits).toEqual(resolveSheet(commonPractice).limits)
    expect(sheet).toMatchObject({ id: 'site', title: 'Site', version: 1, power: { volts: 230, watts: 4600 } })
    expect(sheetOf({ ...site, units: 'us' }).limits).toEqual(resolveSheet(commonPracticeUs).limits)
  })

  it('as YAML, with a limit that stands alone', () => {
    const sheet = sheetOf(
      parse(`
      id: maker
      version: 3
      title: By the maker's sheet
      units: metric
      extends: null
      limits:
        kitTemperatureC: { min: 18, max: 35, basis: site }
      site: { heatPlan: true, basis: site }
    `)
    )
    expect(sheet.limits.kitTemperature).toEqual({ unit: 'C', min: 18, max: 35, cautionBelow: null, cautionAbove: null, basis: 'site' })
    expect(sheet.site).toEqual({ closeUpMin: 60, minWindowMin: 60, heatPlan: true })
  })

  it('passes 70 … 90 °F in its own scale', () => {
    const limits = { kitTemperatureF: { min: 70, max: 90, basis: 'site' } }
    expect(sheetOf({ ...site, units: 'us', limits }).limits.kitTemperature).toMatchObject({ unit: 'F', min: 70, max: 90 })
  })

  it('reads what is kept of it back to the same hash', () => {
    for (const raw of [site, others.warm, { ...site, units: 'us', sheet: { widthFt: 6.5, basis: 'site' } }]) {
      const sheet = sheetOf(raw)
      const again = parseSheet(JSON.parse(JSON.stringify(sheet.resolved)), () => null)
      expect(again).toEqual({ ok: true, sheet })
    }
  })

  it('takes US lengths, and uses them in metres', () => {
    const sheet = sheetOf({
      ...site,
      units: 'us',
      sheet: { widthFt: 10, lapIn: 3, basis: 'site' },
      foam: {
        openTime: [
          { f: 50, s: 90 },
          { f: 95, s: 30 }
        ],
        basis: 'x'
      }
    })
    expect(sheet.sheet).toMatchObject({ widthM: 3.048, lapMm: 76.2, rollM: 20 })
    expect(sheet.foam.openTime).toEqual([
      { c: 10, s: 90 },
      { c: 35, s: 30 }
    ])
  })

  it('may add a substrate', () => {
    const roof = {
      absorptance: 0.5,
      emissivity: 0.9,
      filmMaxMm: 0.2,
      layers: [{ thicknessM: 0.02, rhoKgM3: 500, cJKgK: 1500, kWMK: 0.1 }],
      basis: 'x'
    }
    expect(Object.keys(sheetOf({ ...site, substrates: { cork: roof } }).substrates)).toContain('cork')
  })
})

describe('extends', () => {
  it('keeps the bounds that are not written', () => {
    expect(sheetOf(others.warm).limits.kitTemperature).toMatchObject({ min: 23, cautionBelow: 24, cautionAbove: 31, max: 32 })
  })

  it('goes through several sheets', () => {
    const limits = { humidityPct: { cautionAbove: 80, basis: 'site' } }
    const sheet = sheetOf({ ...site, extends: 'warm', limits })
    expect([sheet.limits.kitTemperature.min, sheet.limits.humidity.cautionAbove]).toEqual([23, 80])
  })

  it('drops a bound that is written as null, and a caution that a new bound has passed', () => {
    const limits = { kitTemperatureC: { min: 23, max: null, basis: 'site' } }
    expect(sheetOf({ ...site, extends: 'common-practice', limits }).limits.kitTemperature).toMatchObject({
      min: 23,
      cautionBelow: null,
      cautionAbove: 31,
      max: null
    })
  })

  it('takes the units of what it extends', () => {
    const { units: _, ...open } = site
    expect(sheetOf({ ...open, extends: 'common-practice-us' }).units).toBe('us')
  })

  it.each([
    ['a circle', others.a, ['extends']],
    ['itself', others.self, ['extends']],
    ['nothing there is', { ...site, extends: 'nowhere' }, ['extends']],
    ['a sheet that is wrong', { ...site, extends: 'bad' }, ['extends']],
    ['other units', { ...site, units: 'us', extends: 'common-practice' }, ['units']]
  ])('%s is a problem', (_, raw, paths) => {
    expect(problems(raw)).toEqual(paths)
  })

  it('ends on a search that never ends', () => {
    let made = 0
    expect(parseSheet({ ...site, extends: 'x' }, () => ({ ...site, id: `n${made++}`, extends: `n${made}` })).ok).toBe(false)
  })
})

describe('a sheet that is wrong', () => {
  const limit = (name: string, value: unknown) => ({ ...site, limits: { [name]: value } })

  it.each([
    ['not a sheet', 'text', ['']],
    ['a list', [], ['']],
    ['null', null, ['']],
    ['nothing in it', {}, ['id', 'title', 'units', 'version']],
    ['id', { ...site, id: 'Not An Id' }, ['id']],
    ['version', { ...site, version: '1' }, ['version']],
    ['units', { ...site, units: 'imperial' }, ['units']],
    ['unknown key', { ...site, colour: 'red' }, ['colour']],
    ['unknown limit', limit('kitTempC', { min: 1, basis: 'x' }), ['limits.kitTempC']],
    ['unknown member of a limit', limit('kitTemperatureC', { minimum: 1, basis: 'x' }), ['limits.kitTemperatureC.minimum']],
    ['key of the other units', limit('kitTemperatureF', { min: 70, basis: 'x' }), ['limits.kitTemperatureF']],
    ['section key of the other units', { ...site, sheet: { widthFt: 6, basis: 'x' } }, ['sheet.widthFt']],
    ['no basis', limit('kitTemperatureC', { min: 1 }), ['limits.kitTemperatureC.basis']],
    ['empty basis', limit('kitTemperatureC', { min: 1, basis: ' ' }), ['limits.kitTemperatureC.basis']],
    ['no basis of a section', { ...site, kit: { mixing: 5 } }, ['kit.basis']],
    ['text for a number', limit('kitTemperatureC', { min: '21', basis: 'x' }), ['limits.kitTemperatureC.min']],
    ['not a number', limit('kitTemperatureC', { min: Number.NaN, basis: 'x' }), ['limits.kitTemperatureC.min']],
    ['a percentage over 100', limit('humidityPct', { cautionAbove: 101, basis: 'x' }), ['limits.humidityPct.cautionAbove']],
    ['a negative speed', limit('windMeanLayKmh', { max: -1, basis: 'x' }), ['limits.windMeanLayKmh.max']],
    ['min above cautionBelow', limit('kitTemperatureC', { min: 22, cautionBelow: 21, basis: 'x' }), ['limits.kitTemperatureC.min']],
    ['cautionAbove above max', limit('kitTemperatureC', { max: 30, cautionAbove: 31, basis: 'x' }), ['limits.kitTemperatureC.cautionAbove']],
    ['min above max', limit('kitTemperatureC', { min: 33, max: 32, basis: 'x' }), ['limits.kitTemperatureC.min']],
    [
      'cautionBelow above cautionAbove',
      limit('kitTemperatureC', { cautionBelow: 33, cautionAbove: 32, basis: 'x' }),
      ['limits.kitTemperatureC.cautionBelow']
    ],
    ['cloud bounds', { ...site, changed: { cloudLowPct: 80, basis: 'x' } }, ['changed.cloudLowPct']],
    ['relaxing faster in the cold', { ...site, sheet: { relaxMin: 90, basis: 'x' } }, ['sheet.relaxMin']],
    ['one point of open time', { ...site, foam: { openTime: [{ c: 10, s: 90 }], basis: 'x' } }, ['foam.openTime']],
    [
      'points the wrong way round',
      {
        ...site,
        foam: {
          openTime: [
            { c: 35, s: 30 },
            { c: 10, s: 90 }
          ],
          basis: 'x'
        }
      },
      ['foam.openTime.1']
    ],
    [
      'half a substrate',
      { ...site, substrates: { cork: { absorptance: 0.5, basis: 'x' } } },
      ['substrates.cork.emissivity', 'substrates.cork.filmMaxMm', 'substrates.cork.layers']
    ],
    [
      'half a layer',
      { ...site, substrates: { board: { layers: [{ thicknessM: 0.1, rhoKgM3: 30, cJKgK: 1400 }], basis: 'x' } } },
      ['substrates.board.layers.0.kWMK']
    ],
    ['an emissivity over 1', { ...site, substrates: { board: { emissivity: 1.1, basis: 'x' } } }, ['substrates.board.emissivity']],
    ['ends of a cylinder', { ...site, kit: { exposedEnds: 3, basis: 'x' } }, ['kit.exposedEnds']],
    ['yes for true', { ...site, site: { heatPlan: 'yes', basis: 'x' } }, ['site.heatPlan']]
  ] as const)('%s', (_, raw, paths) => {
    expect(problems(raw).sort()).toEqual([...paths].sort())
  })

  it('tells every problem at once', () => {
    const raw = {
      ...site,
      version: 0,
      colour: 'red',
      kit: { mixing: 'much' },
      limits: { kitTemperatureC: { min: 23, cautionBelow: 22, basis: 'x' }, airSprayF: { min: 41, basis: 'x' }, humidityPct: { cautionAbove: 85 } }
    }
    expect(problems(raw).sort()).toEqual([
      'colour',
      'kit.basis',
      'kit.mixing',
      'limits.airSprayF',
      'limits.humidityPct.basis',
      'limits.kitTemperatureC.min',
      'version'
    ])
  })

  it('says which key the units of the sheet want', () => {
    const parsed = parseSheet(limit('kitTemperatureF', { min: 70, basis: 'x' }), find)
    expect(parsed.ok ? '' : parsed.problems[0]?.message).toContain('kitTemperatureC')
  })
})

describe('the crew of a sheet', () => {
  const crewOf = (raw: unknown) => {
    const parsed = parseSheet(raw, () => null)
    return parsed.ok ? parsed.sheet.crew : parsed.problems.map(({ path }) => path)
  }
  const sheetWith = (units: string, crew: object) => ({ id: 'ours', version: 1, title: 'Ours', units, crew: { ...crew, basis: 'site' } })

  it('is read in US units too: 1000 ft2 and 10 ft are 92.90304 m2 and 3.048 m by definition', () => {
    expect(crewOf(sheetWith('us', { gangs: 2, sprayFt2H: 1000, weldRobotFtMin: 10 }))).toMatchObject({
      gangs: 2,
      sprayM2H: 92.90304,
      weldRobotMMin: 3.048
    })
  })

  it('is refused where it says nothing possible, each with its path', () => {
    expect(crewOf(sheetWith('metric', { gangs: 0, sprayM2H: 0, rollM2H: -1, weldRobotMMin: Number.NaN, tieInMin: -5 }))).toEqual(
      ['gangs', 'sprayM2H', 'rollM2H', 'weldRobotMMin', 'tieInMin'].map((key) => `crew.${key}`)
    )
    expect(crewOf(sheetWith('metric', { gangs: 1.5, sprayFt2H: 1000 }))).toEqual(['crew.gangs', 'crew.sprayFt2H'])
  })
})
