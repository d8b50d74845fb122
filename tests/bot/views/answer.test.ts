import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Answer, FindingId } from '../../../src/bot/answer.js'
import { texts } from '../../../src/bot/text/index.js'
import { commandNames, usages } from '../../../src/bot/text/usages.js'
import { amount } from '../../../src/bot/views/amount.js'
import { speak } from '../../../src/bot/views/answer.js'
import { readWords } from '../../../src/bot/words/read.js'
import { fixes } from '../../../src/core/fix.js'
import { outcomes } from '../../../src/core/outcome.js'
import { answer, finding, hows, metric, morning } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'

/** What each measured rule is measured in. */
const measured: Partial<Record<FindingId, readonly [value: number, limit: number, unit: string]>> = {
  'kit-temperature': [19.5, 21, 'C'],
  'air-temperature': [4, 5, 'C'],
  'substrate-temperature': [4, 5, 'C'],
  'dew-margin': [2.4, 3, 'K'],
  humidity: [88, 95, '%'],
  'rain-coming': [60, 50, '%'],
  'wind-mean': [30, 25, 'km/h'],
  'wind-gust': [40, 35, 'km/h'],
  daylight: [-20, 0, 'min'],
  power: [6, 5, '%'],
  'traffic-wait': [5, 10, 'min'],
  heat: [52, 51.7, 'C'],
  cold: [-30, -27, 'C'],
  'strip-land': [30, 38, 'mm'],
  'strip-gap': [-2, 0, 'mm'],
  'coupon-width': [36, 38, 'mm'],
  ice: [-1, 0, 'C']
}

const ids = Object.keys(texts.en.findings) as FindingId[]

const full: Readonly<Record<string, Answer['numbers']>> = {
  spray: {
    airC: 20,
    rhPct: 60,
    dewPointC: 12,
    frostPointC: null,
    wetBulbC: 15,
    substrateC: 18,
    dewMarginK: 6,
    kitColdC: 23,
    kitHotC: 24,
    windKmh: 10,
    gustKmh: 18,
    rainChancePct: 10,
    heatIndexC: 20,
    windChillC: null,
    daylightMin: 600,
    wbgtC: 18,
    openTimeS: 60,
    reachM: 12,
    stopEveryM: 12,
    ways: [
      { how: 'stop', reachM: 12, noLimit: false },
      { how: 'follow', reachM: null, noLimit: true },
      { how: 'flop', reachM: 7.5, noLimit: false }
    ],
    stopS: 49,
    nozzleGelS: 30,
    gelsAtStops: true,
    nozzlesNeeded: 12,
    nozzlesPerKit: 10,
    nozzlesShort: true
  },
  air: { airC: 20, rhPct: 60, windKmh: 10, gustKmh: 18 },
  weld: {
    sheetC: 25,
    dewMarginK: 8,
    dropPct: 2,
    rainChancePct: 40,
    welders: [
      { name: 'robot', cleared: true, lapsedBy: null, widthMm: 41, at: null },
      { name: 'Z<9>', cleared: false, lapsedBy: 'half-day', widthMm: null, at: null }
    ]
  },
  strip: {
    lengthMm: 2150,
    landMm: 72,
    minWidthMm: 38,
    cornerRadiusMm: 25,
    weldPerimeterMm: 4557.079633,
    robotMm: 4200,
    handMm: 357.079633,
    count: 1
  },
  day: {
    date: '2026-05-05',
    known: true,
    windows: (['spray', 'lay', 'weld', 'people'] as const).flatMap((activity) =>
      [4, 6, 8, 10, 12, 14].map((hour) => ({
        activity,
        from: `2026-05-05T${String(hour).padStart(2, '0')}:00:00Z`,
        to: `2026-05-05T${String(hour + 1).padStart(2, '0')}:30:00Z`,
        outcome: hour === 4 ? 'no-go' : 'caution',
        opens: 'substrate-temperature',
        closes: 'rain-coming'
      }))
    ),
    sunriseAt: '2026-05-05T03:57:00Z',
    sunsetAt: '2026-05-05T18:52:00Z',
    lastSheetBy: '2026-05-05T13:20:00Z',
    closeBy: '2026-05-05T15:30:00Z',
    closing: 'rain',
    bindingPath: 'backlog',
    dryAt: '2026-05-05T06:10:00Z',
    firstSprayAt: '2026-05-05T06:40:00Z',
    dewFrom: '2026-05-05T20:40:00Z',
    fitsM2: 123_456.789,
    bindingWork: 'robot',
    backlogRobotM: 1234.5,
    backlogHandM: 12.25,
    stage: [
      { what: 'kits', count: 1_000_000, warming: 3 },
      { what: 'nozzles', count: 70 },
      { what: 'strips', count: 1 }
    ],
    openTimeS: 45,
    stopEveryM: 0,
    ways: [{ how: 'flop', reachM: 1.5, noLimit: false }],
    gangs: 2,
    minWindowMin: 60,
    toRead: ['read:kit', 'read:substrate', 'read:sheet'],
    hazards: [{ rule: 'heat', outcome: 'caution', from: '2026-05-05T10:00:00Z', to: '2026-05-05T14:00:00Z' }]
  },
  probe: {
    void: 1,
    state: 'open',
    mend: 'patch',
    mendWhy: 'long',
    patchMm: 350,
    probeMm: 300,
    patched: false,
    causes: ['scorched', 'wet'],
    photos: 2,
    waitUntil: '2026-05-04T06:20:00Z',
    datedAt: '2026-05-04T05:00:00Z',
    under: [3, 4],
    open: 1,
    repaired: 1,
    passed: 3,
    per100m: 1.25,
    per100mUpper90: 3.5,
    list: [{ void: 1, state: 'open', course: 4, on: 'end', distanceM: 3.2, lengthMm: 40, at: '2026-05-03T06:00:00Z' }]
  },
  bond: {
    bonds: [{ substrate: 'board', broke: 'face', passed: false, forceN: 900, wantedN: 1200, squareMm: 300, stressKpa: 10 }],
    ...{ substrate: 'my board', broke: 'face', passed: false, forceN: 900, wantedN: 1200, squareMm: 300, stressKpa: 10 }
  },
  seal: {
    openEdgeM: 12.5,
    method: 'mastic',
    cut: true,
    wetM: 0.6,
    by: 'A<na>',
    photos: 2,
    toCutM: 8,
    open: [
      { what: 'voids', outcome: 'no-go', numbers: Array.from({ length: 40 }, (_, i) => i + 1) },
      { what: 'reprobe', outcome: 'no-go', numbers: [7] },
      { what: 'punch', outcome: 'caution', numbers: [1] },
      { what: 'on-hold', outcome: 'no-go', welder: 'robot', metresM: 20 },
      { what: 'bond', outcome: 'unknown', why: 'unstated', substrate: 'foil' },
      { what: 'seal', outcome: 'no-go', why: 'open', openEdgeM: 4 },
      { what: 'fire', outcome: 'no-go', why: 'running', untilAt: '2026-05-04T16:00:00Z', leftMin: 20 },
      { what: 'fire', outcome: 'unknown', why: 'unsigned', untilAt: '2026-05-04T16:00:00Z', leftMin: 0 }
    ]
  },
  fire: { state: 'running', heatAt: '2026-05-04T06:00:00Z', untilAt: '2026-05-04T08:30:00Z', leftMin: 140, watchMin: 150, by: 'Ana' },
  detail: {
    details: [
      { kind: 'corners', status: 'good', at: '2026-05-04T06:00:00Z' },
      { kind: 'tSteps', status: null, at: null },
      { kind: 'drains', status: 'bad', at: '2026-05-03T06:00:00Z' }
    ]
  },
  punch: {
    number: 3,
    text: 'flange *loose* <@U1>',
    state: 'open',
    at: '2026-05-04T06:00:00Z',
    photos: 1,
    open: 2,
    done: 1,
    list: Array.from({ length: 30 }, (_, i) => ({ number: i + 1, text: 'x'.repeat(100), state: 'open', at: '2026-05-03T06:00:00Z', photos: 0 }))
  },
  kit: {
    kit: 'K7',
    isoC: 24,
    resinC: 23,
    shellC: 26,
    meanC: 24,
    coreC: 22,
    readyAt: '2026-05-04T09:00:00Z',
    coldAt: '2026-05-04T12:00:00Z',
    startBy: '2026-05-03T13:00:00Z',
    kits: [
      { name: 'K7', isoC: 24, resinC: 23, at: null, mixedAt: '2026-05-04T06:00:00Z', expiresOn: '2027-01-01', place: 'box', lot: '*A1*', empty: true }
    ]
  },
  foam: { openTimeS: 45, scale: 0.9, verdict: 'iso-rich' },
  laid: { areaM2: 42, robotM: 20, handM: 4, yieldM2PerKit: 75, planM2PerKit: 90, driftPct: -16.7 },
  site: {
    site: {
      lat: 50,
      lon: 8,
      zone: 'Europe/Berlin',
      units: 'metric',
      lang: 'en',
      morning: '05:30',
      evening: '17:00',
      posts: ['evening', 'watch'],
      days: [1, 2],
      hours: '06:00-18:00',
      limits: 'common-practice',
      substrate: 'board',
      channel: null,
      roof: { widthM: 24, depthM: 36, heightM: 8 },
      closed: true,
      invented: true
    },
    sites: ['north', 'south']
  },
  help: { about: null, usages: null },
  me: { lang: 'es', units: null },
  undo: { undone: ['north-3', 'north-4'] }
}

const coupon = {
  passed: false,
  widthMm: 36,
  minWidthMm: 38,
  cause: 'cold',
  move: { temperature: 'up', speed: 'down', pressure: 'keep' },
  cleared: false,
  lapsedBy: 'failed',
  onHoldM: 120,
  meanMm: 40,
  sigmaMm: 1.5,
  chanceShort: 0.09
}

const logged = { logged: ['north-12', 'north-13'], undoUntil: morning + 600, decision: 'north-14' }
const weather = { source: 'met', issuedAt: '2026-05-04T04:00:00Z', stale: false, sample: false }

describe('every command', () => {
  it.each(commandNames)('%s says something within the limits in every language and system', (command) => {
    for (const how of hows) {
      for (const outcome of [...outcomes, null]) {
        const spoken = speak(answer({ command, outcome, numbers: full[command] ?? {}, weather, changesAt: morning + 5000, ...logged }), how)

        expect(blockProblems(spoken)).toEqual([])
        expect(spoken.text.split('\n').at(-1)).toContain('north-12 north-13')
      }
      expect(blockProblems(speak(answer({ command }), how))).toEqual([])
    }
  })

  it.each(commandNames)('help %s shows usage, example and description', (about) => {
    for (const how of hows) {
      const spoken = speak(answer({ command: 'help', numbers: { about, usages: { [about]: usages[about].usage } } }), how)

      expect(blockProblems(spoken)).toEqual([])
      expect(spoken.text).toContain(texts[how.lang].usages[about].example)
      expect(spoken.text.replace(/\u00a0/g, ' ')).toContain(texts[how.lang].commands[about])
    }
  })

  it('gives a coupon its own view', () => {
    for (const how of hows) {
      const spoken = speak(answer({ command: 'weld', outcome: 'no-go', numbers: coupon }), how)

      expect(blockProblems(spoken)).toEqual([])
      expect(spoken.text).toContain(texts[how.lang].coupon.moves.speed.down)
      expect(spoken.text).toContain(amount(36, 'mm', how))
    }
  })

  it('says in blocks what the text says', () => {
    for (const command of commandNames) {
      const { text, blocks } = speak(answer({ command, outcome: 'go', numbers: full[command] ?? {}, weather, ...logged }), metric)
      const inBlocks = JSON.stringify(blocks)

      for (const line of text.split('\n')) expect(inBlocks).toContain(JSON.stringify(line).slice(1, -1))
    }
  })
})

describe('every finding', () => {
  it.each(ids)('%s has words for every outcome, with its number in the right unit', (rule) => {
    const [value, limit, unit] = measured[rule] ?? [null, null, null]
    for (const how of hows) {
      for (const outcome of outcomes) {
        const margin = value === null || limit === null ? null : value - limit
        const spoken = speak(answer({ command: 'spray', outcome, findings: [finding(rule, { outcome, value, limit, margin, unit })] }), how)
        const without = speak(answer({ command: 'spray', outcome, findings: [finding(rule, { outcome, stale: true })] }), how)

        expect(blockProblems(spoken)).toEqual([])
        expect(blockProblems(without)).toEqual([])
        if (outcome !== 'go') expect(without.text.split('\n').length).toBeGreaterThan(1)
        if (value !== null && (outcome !== 'go' || margin !== null)) expect(spoken.text).toContain(amount(value, unit, how))
      }
    }
  })

  it('has words for every fix', () => {
    for (const how of hows) {
      for (const fix of fixes) {
        const { text } = speak(answer({ command: 'spray', outcome: 'no-go', findings: [finding('humidity', { value: 90, unit: '%', fix })] }), how)

        expect(text.replace(/\u00a0/g, ' ')).toContain(`→ ${texts[how.lang].fixes[fix]}`)
      }
    }
  })

  it('keeps to the three worst in the text, all of them in the blocks', () => {
    const findings = ids.map((rule) => finding(rule, { outcome: 'no-go', fix: 'wait:air' }))
    for (const how of hows) {
      const spoken = speak(answer({ command: 'spray', outcome: 'no-go', findings, ...logged }), how)

      expect(blockProblems(spoken)).toEqual([])
      expect(spoken.text.split('\n').filter((line) => line.startsWith('✕ '))).toHaveLength(4)
      expect(JSON.stringify(spoken.blocks).split('\\n✕ ').length - 1 + 2).toBeGreaterThanOrEqual(ids.length)
    }
  })

  it('puts what is missing into one line of words to say, readings first, and nowhere else', () => {
    const missing = (rule: Parameters<typeof finding>[0], fix: NonNullable<ReturnType<typeof finding>['fix']>) =>
      finding(rule, { outcome: 'unknown', fix })
    const findings = [missing('compatibility', 'state:compatibility'), missing('dew-margin', 'read:substrate'), missing('kit-mixed', 'state:mixed')]
    const said = {
      en: 'still to say: deck T · compatible · mixed',
      es: 'falta decir: cubierta T · compatible · mezclado',
      fr: 'reste à dire\u00a0: support T · compatible · mélangé'
    }
    for (const how of hows) {
      const spoken = speak(answer({ command: 'spray', outcome: 'unknown', findings, ...logged }), how)

      expect(spoken.text).toContain(said[how.lang])
      expect(JSON.stringify(spoken.blocks)).not.toContain('\\n? ')
    }
  })

  it('tells words to say that are understood when they are said', () => {
    const values: readonly (readonly [RegExp, string])[] = [
      [/L (AREA|SECCIÓN|SECTION)/, '30 m 2.5 mm2'],
      [/DATE|FECHA/, '2099-01-01'],
      [/WIDTH|ANCHO|LARGEUR/, '41 mm'],
      [/LENGTH|LARGO|LONGUEUR/, '12 m'],
      [/ T$/, ' 20'],
      [/ N\b/, ' 50'],
      [/ V$/, ' 10'],
      [/@(TIME|HORA|HEURE)/, '@00:01']
    ]
    const filled = (words: string) => values.reduce((text, [placeholder, value]) => text.replace(placeholder, value), words)
    const weld = new Set(['read:sheet', 'state:lap', 'state:lead', 'weld:coupon'])
    const closing: Readonly<Record<string, string>> = {
      'state:bond': 'bond',
      'state:seal': 'seal',
      'state:drains': 'seal',
      'state:rolled': 'seal',
      'state:fire': 'fire',
      'state:heat': 'fire',
      'state:detail': 'detail'
    }
    for (const { toSay } of Object.values(texts)) {
      for (const [fix, words] of Object.entries(toSay)) {
        const read = readWords(`${closing[fix] ?? (weld.has(fix) ? 'weld' : 'spray')} ${filled(words)}`, {
          units: 'metric',
          zone: 'UTC',
          now: morning
        })
        expect(read.ok, `${fix}: ${words}`).toBe(true)
      }
    }
  })
})

describe('a decision', () => {
  const outcomesOf = { conditions: 'go', checklist: 'unknown', people: 'go' } as const

  it('says outcome, groups, the binding reason with number and limit, what to do, when it changes, one caution, what was logged', () => {
    const findings = [
      finding('dew-margin', { value: 2.4, unit: 'K', limit: 3, margin: -0.6, fix: 'wait:dew' }),
      finding('substrate-dry', { outcome: 'unknown', group: 'checklist', fix: 'state:dry' })
    ]
    const { text } = speak(
      answer({
        command: 'spray',
        outcome: 'no-go',
        outcomes: { conditions: 'no-go', checklist: 'unknown', people: 'go' },
        findings,
        changesAt: morning + 3900,
        weather,
        logged: ['north-12'],
        undoUntil: morning + 600,
        decision: 'north-13'
      }),
      metric
    )

    expect(text.split('\n')).toEqual([
      '✕ NO-GO: spray',
      'conditions no-go · checklist: 1 to state · people go',
      '✕ dew margin 2.4 °C, at least 3 °C → wait until the surface is clear of the dew point',
      '? substrate dry: not stated → check and state: dry',
      'likely to change about 09:15',
      'Isocyanates: gloves, eyes, breathing protection, keep others away. Local rules and licensed practice come first.',
      'Data from MET Norway · issued 06:00 · limits sheet common-practice v1 · decision north-13',
      'logged as north-12 · undo within 10 min (undo north-12)'
    ])
  })

  it('asks for a reading, or for what is to be stated when no reading is missing', () => {
    const head = (findings: Answer['findings']) =>
      speak(answer({ command: 'spray', outcome: 'unknown', outcomes: outcomesOf, findings }), metric).text.split('\n')[0]
    const state = (rule: FindingId) => finding(rule, { outcome: 'unknown', group: 'checklist', fix: 'state:dry' })

    expect(head([finding('wind-gust', { outcome: 'unknown', fix: 'read:gust' }), state('substrate-dry')])).toBe('? UNKNOWN: spray — take a reading')
    expect(head([state('substrate-dry'), state('fleece-dry')])).toBe('? UNKNOWN: spray — 2 to state')
    expect(head([finding('coupon', { outcome: 'unknown', group: 'checklist', fix: 'weld:coupon' })])).toBe('? UNKNOWN: spray — weld a coupon')
  })

  it('says which finding is tightest when all is go', () => {
    const findings = [
      finding('wind-gust', { outcome: 'go', value: 20, unit: 'km/h', limit: 35, margin: 15 }),
      finding('dew-margin', { outcome: 'go', value: 9, unit: 'K', limit: 3, margin: 6 })
    ]

    expect(speak(answer({ command: 'spray', outcome: 'go', findings }), metric).text).toContain('tightest: gust 20 km/h, at most 35 km/h')
  })

  it('says a finding of two activities once', () => {
    const gust = finding('wind-gust', { value: 60, unit: 'km/h', limit: 56, margin: -4, fix: 'wait:wind' })
    const { text } = speak(
      answer({
        command: 'air',
        outcome: 'no-go',
        findings: [
          { ...gust, activity: 'lay' },
          { ...gust, activity: 'people', group: 'people' }
        ]
      }),
      metric
    )

    expect(text.match(/gust 60/g)).toHaveLength(1)
  })

  it('never stops a crew from closing up: weld says close up now when rain is coming', () => {
    expect(speak(answer({ command: 'weld', outcome: 'go', numbers: full.weld ?? {} }), metric).text).toContain('close up now')
  })

  it('cautions of the hazard that is there before the usual one', () => {
    const { text } = speak(answer({ command: 'spray', outcome: 'no-go', findings: [finding('thunder', { value: true, group: 'people' })] }), metric)

    expect(text).toContain('Lightning:')
    expect(text).not.toContain('Isocyanates:')
  })

  it.each([
    ['met', false, 'Data from MET Norway'],
    ['nws', false, 'US National Weather Service'],
    ['open-meteo', false, 'Weather data by Open-Meteo.com'],
    ['sample', true, 'invented week, demo'],
    ['file', true, 'invented week, demo']
  ])('names the source of the weather: %s', (source, sample, said) => {
    const { blocks } = speak(answer({ command: 'spray', outcome: 'go', weather: { ...weather, source, sample, stale: true } }), metric)

    const notes = JSON.stringify(blocks.filter(({ type }) => type === 'context'))
    expect(notes).toContain(said)
    expect(notes).toContain('more than 3 h old')
    expect(notes).toContain('limits sheet common-practice v1')
  })
})

describe('what people wrote', () => {
  it('can neither ping, nor link, nor format, wherever it stands', () => {
    const hostile = ['<!channel>', '<@U1>', '*bold*', 'https://example.org', '`x` ~y~ _z_', '> quote', '&lt;!here&gt;']
    for (const word of hostile) {
      const answers = [
        answer({ command: 'kit', site: word, numbers: { kit: word, kits: [{ name: word, lot: word }] } }),
        answer({ command: 'weld', numbers: { passed: true, cleared: true, welder: word } }),
        answer({ command: 'weld', numbers: { welders: [{ name: word, cleared: true }] } }),
        answer({ command: 'site', site: word, numbers: { site: { channel: word, substrate: word, posts: [word], zone: word }, sites: [word] } }),
        answer({ command: 'undo', numbers: { undone: [word] } })
      ]
      for (const each of answers) for (const how of hows) expect(blockProblems(speak(each, how))).toEqual([])
    }
  })

  it('stays within the limits however long and many', () => {
    const long = 'é&'.repeat(400)
    const kits = Array.from({ length: 300 }, () => ({ name: long, lot: long, isoC: 20 }))
    const list = Array.from({ length: 300 }, (_, i) => ({
      void: i + 1,
      state: 'open',
      course: 4,
      on: 'end',
      distanceM: 3.2,
      lengthMm: 40,
      at: '2026-05-03T06:00:00Z'
    }))
    const sites = Array.from({ length: 300 }, () => long)
    const ids300 = Array.from({ length: 300 }, (_, i) => `north-${i}`)
    for (const how of hows) {
      for (const each of [
        answer({ command: 'kit', numbers: { kit: long, kits } }),
        answer({ command: 'probe', outcome: 'no-go', numbers: { open: 300, list } }),
        answer({ command: 'site', numbers: { sites } }),
        answer({ command: 'spray', logged: ids300, undoUntil: morning }),
        answer({ command: 'undo', numbers: { undone: ids300 } })
      ])
        expect(blockProblems(speak(each, how))).toEqual([])
    }
  })

  it('is sent as given numbers allow: any JSON in the numbers makes a message', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...commandNames),
        fc.dictionary(fc.constantFrom(...Object.values(full).flatMap((numbers) => Object.keys(numbers)), 'passed'), fc.jsonValue()),
        (command, numbers) => {
          const spoken = speak(answer({ command, numbers: numbers as Answer['numbers'] }), metric)

          expect(spoken.blocks.length).toBeGreaterThan(0)
          expect([...spoken.text].length).toBeLessThanOrEqual(3000)
        }
      )
    )
  })
})
