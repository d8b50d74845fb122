import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/bot/reply.js'
import { localDate } from '../../../src/core/instant.js'
import { hows } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { iso } from '../../support/instant.js'
import { numbersOf, seamhands, type WeatherChoice } from '../../support/seamhand.js'

const open = seamhands()
const sample = { weather: 'sample' } as const

interface SaidWindow {
  readonly activity: string
  readonly from: string
  readonly to: string
  readonly outcome: string
}

function windowsOf(reply: Reply, activity: string): readonly SaidWindow[] {
  return (numbersOf(reply).windows as readonly SaidWindow[]).filter((one) => one.activity === activity)
}

/** Seconds from the last sheet to when all must be closed. */
function afterLastS(reply: Reply): number {
  const { lastSheetBy, closeBy } = numbersOf(reply)
  return iso(closeBy) - iso(lastSheetBy)
}

const order = ['go', 'caution', 'unknown', 'no-go']
const keys = ['windows', 'sunriseAt', 'sunsetAt', 'lastSheetBy', 'dryAt', 'dewFrom', 'stage', 'fitsM2', 'bindingPath']

describe('/day', () => {
  it('has the outcome of its best window to spray, on every day of the invented week', async () => {
    const seamhand = await open(sample)
    for (let day = 4; day <= 10; day += 1) {
      const at = `2026-05-${String(day).padStart(2, '0')}T03:30:00Z`
      const reply = await seamhand.ask('day', { at })
      const spray = windowsOf(reply, 'spray').map(({ outcome }) => order.indexOf(outcome))
      expect([reply.ok, reply.outcome]).toEqual([true, order[spray.length === 0 ? 3 : Math.min(...spray)]])
      expect(Object.keys(numbersOf(reply))).toEqual(expect.arrayContaining(keys))
      for (const { from, to } of numbersOf(reply).windows)
        expect([localDate(iso(from), 'Europe/Berlin'), iso(to) > iso(from)]).toEqual([at.slice(0, 10), true])
    }
  })

  it('logs nothing, not even a decision', async () => {
    const seamhand = await open(sample)
    const reply = await seamhand.ask('day')
    expect([reply.logged, reply.decision, reply.undoUntil]).toEqual([[], null, null])
    expect(await seamhand.entries()).toEqual([])
  })

  it('is of another day where one is named', async () => {
    const seamhand = await open(sample)
    const tomorrow = await seamhand.ask('day tomorrow', { at: '07:00' })
    expect(numbersOf(tomorrow)).toMatchObject({ date: '2026-05-05', known: true })
    expect(numbersOf(tomorrow).sunriseAt).toMatch(/^2026-05-05T03:5\d:\d\dZ$/)
    expect(numbersOf(await seamhand.ask('day 2026-05-05', { at: '07:00' }))).toEqual(numbersOf(tomorrow))
  })

  it.each([
    ['without a forecast', 'day', 'none'],
    ['of a day that is over', 'day 2026-05-03', 'sample'],
    ['beyond the forecast', 'day 2026-09-01', 'sample']
  ] as const)('is unknown %s: no window, no plan, the sun all the same', async (_, text, weather) => {
    const reply = await (await open({ weather })).ask(text)
    expect(reply).toMatchObject({
      ok: true,
      outcome: 'unknown',
      activities: { spray: 'unknown', lay: 'unknown', weld: 'unknown', people: 'unknown' }
    })
    expect(numbersOf(reply)).toMatchObject({ windows: [], lastSheetBy: null, fitsM2: null, bindingPath: null, stage: [] })
    expect(numbersOf(reply).sunriseAt).not.toBeNull()
    expect(reply.text.split('\n')[1]).toBe('no forecast that can be used')
  })

  it('has the last sheet 75 min before the close, as the rates of the built-in sheet make it', async () => {
    const reply = await (await open(sample)).ask('day', { at: '07:00' })
    // Sum by hand: 9.6 + 10 + 10.394 + 45 min, see tests/core/plan/last-sheet.test.ts.
    expect(afterLastS(reply)).toBe(4500)
    expect(numbersOf(reply).bindingPath).toBe('sheet')
    expect(reply.text).toMatch(/Last sheet in by \d\d:\d\d, all welded and tied in by \d\d:\d\d \(/)
    const [kits, nozzles] = numbersOf(reply).stage
    expect(kits.count).toBe(Math.ceil(numbersOf(reply).fitsM2 / 90))
    expect(nozzles).toEqual({ what: 'nozzles', count: kits.count * 10 })
  })

  it('counts no hour that is not known: head, first spray, what fits and what to bring are of the hours that are', async () => {
    const seamhand = await open(sample)
    for (const [lang, first, word] of [
      ['en', 'first spray about 18:00', '10:00–18:00 unknown and not counted: take readings. If they say go: first spray about 10:00'],
      [
        'es',
        'primera pasada hacia las 18:00',
        '10:00–18:00 sin dato y sin contar: tomar lecturas. Si dicen que se puede: primera pasada hacia las 10:00'
      ],
      ['fr', 'première passe vers 18:00', '10:00–18:00 inconnu et pas compté : prendre des mesures. Si elles disent oui : première passe vers 10:00']
    ] as const) {
      const reply = await seamhand.ask('day tomorrow', { at: '10:00', lang })
      const said = reply.text.replaceAll('\u00a0', ' ')
      expect(said.split('\n')[0]).toContain(' 18:00–20:00,')
      expect(said).toContain(first)
      expect(said).toContain(word)
      expect(said).not.toMatch(/until then|hasta entonces|jusque-là|ends by|termina por|fin : /)
      const { fitsM2, unsure, stage } = numbersOf(reply)
      // Two hours by the sum of day-plan.test.ts: less than (120 − 55) min.
      expect(fitsM2).toBeLessThan(65 / 1.0206)
      expect(unsure.fitsM2).toBeGreaterThan(400)
      expect(stage[0].count).toBe(1)
    }
  })

  it('counts what was laid and not welded, until it is', async () => {
    const seamhand = await open(sample)
    await seamhand.ask('laid 384 m2 robot 42 hand 3.6', { at: '09:30' })
    const behind = await seamhand.ask('day', { at: '10:00' })
    // 242 − 42 = 200 m by robot at 2.5 m/min: 80 min in place of the wait of 10, and nothing left by hand.
    expect(numbersOf(behind)).toMatchObject({ bindingPath: 'backlog', backlogHandM: 0 })
    expect(numbersOf(behind).backlogRobotM).toBeCloseTo(200, 6)
    expect(afterLastS(behind)).toBe(4500 + 70 * 60)
    expect(behind.text).toContain('still to weld: robot 200 m, hand 0 m')
    await seamhand.ask('laid 1 m2 robot 201', { at: '11:00' })
    expect(numbersOf(await seamhand.ask('day', { at: '11:30' })).bindingPath).toBe('sheet')
  })

  it('says so when the time of the last sheet is over', async () => {
    const seamhand = await open(sample)
    await seamhand.ask('laid 2000 m2', { at: '12:00' })
    expect((await seamhand.ask('day', { at: '13:00' })).text).toContain('No further sheet: the last one was to be in by')
  })

  it('asks for kits to be warming where one is known to be cold', async () => {
    const seamhand = await open(sample)
    await seamhand.ask('kit K1 iso 10 resin 10 mixed box 28', { at: '06:00' })
    const [kits] = numbersOf(await seamhand.ask('day', { at: '06:10' })).stage
    expect(kits.warming).toBeGreaterThanOrEqual(1)
    expect(kits.warming).toBeLessThanOrEqual(kits.count)
  })

  it('judges all four activities, and binds by what binds spraying', async () => {
    const reply = await (await open(sample)).ask('day', { at: '07:00' })
    for (const outcome of Object.values(reply.activities)) expect(order).toContain(outcome)
    expect(reply.findings.length).toBeLessThanOrEqual(1)
    expect(reply.outcomes).toBeNull()
  })

  it('answers the same to everyone who may ask, in every language and system, within the limits of a message', async () => {
    const seamhand = await open(sample)
    await seamhand.ask('laid 100 m2', { at: '06:30' })
    const numbers = JSON.stringify(numbersOf(await seamhand.ask('day', { at: '07:00' })))
    for (const { lang, units } of hows) {
      const reply = await seamhand.ask('day', { at: '07:00', lang, units, role: 'crew', user: 'U2' })
      expect(blockProblems(reply)).toEqual([])
      expect(JSON.stringify(numbersOf(reply))).toBe(numbers)
      expect(reply.text.split('\n')[0]).toMatch(/^[✓△?✕] .*\d\d:\d\d–\d\d:\d\d, /)
      expect(blockProblems(await seamhand.ask('day tomorrow', { lang, units, weather: 'none' }))).toEqual([])
    }
  })

  it('carries the picture of the day, the same bytes each time, and says in words what it shows', async () => {
    const seamhand = await open(sample)
    const replies = [await seamhand.ask('day', { at: '07:00' }), await seamhand.ask('day', { at: '07:00' })]
    const [first, second] = replies.map(({ files }) => files as unknown as readonly { alt: string; sha256: string }[])
    expect(first).toEqual([{ kind: 'day', name: 'demo-2026-05-04.png', sha256: expect.stringMatching(/^[0-9a-f]{64}$/), alt: expect.any(String) }])
    expect(second).toEqual(first)
    const { alt = '', sha256 } = first?.[0] ?? {}
    for (const name of ['air', 'dew point', 'substrate', 'wind', 'gust', 'sunrise', 'sunset']) expect(alt.toLowerCase()).toContain(name)
    expect(alt).toMatch(/Substrate -?\d+\s°C at/)
    expect(alt.length).toBeLessThan(2000)
    const spanish = (await seamhand.ask('day', { at: '07:00', lang: 'es' })).files[0] as { alt: string; sha256: string }
    expect(spanish.alt).not.toBe(alt)
    expect(spanish.sha256).not.toBe(sha256)
  })

  // Recorded answers of the services, see tests/fixtures/weather/README.md.
  it.each([
    ['metno_complete.json', '2020-07-20T01:30:57Z', '2020-07-20T12:00:00Z'],
    ['metno_compact.json', '2020-07-20T01:30:57Z', '2020-07-20T12:00:00Z'],
    ['nws_gridpoints.json', '2024-02-20T15:15:12Z', '2024-02-20T15:20:00Z'],
    ['open-meteo_forecast.json', '2026-05-04T03:30:00Z', '2026-05-04T04:10:00Z']
  ] as const)('runs on %s', async (file, issuedAt, at) => {
    const weather: WeatherChoice = { file, issuedAt }
    const seamhand = await open({ weather })
    const reply = await seamhand.ask('day', { at })
    expect([reply.ok, seamhand.bugs]).toEqual([true, []])
    expect(order).toContain(reply.outcome)
    expect(numbersOf(reply).known).toBe(true)
    expect(blockProblems(reply)).toEqual([])
  })
})
