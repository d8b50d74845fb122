import { describe, expect, it } from 'vitest'
import { dataWords } from '../../../src/bot/papers/record/entry-words.js'
import { texts } from '../../../src/bot/text/index.js'
import { verifySite } from '../../../src/bot/verify.js'
import type { How } from '../../../src/bot/views/how.js'
import { numbersOf, type Question, type Seamhand, seamhands } from '../../support/seamhand.js'

const open = seamhands()

/** The worked example of outside contract §6. */
const ready =
  'spray air 20 deck 20 rh 50 wind 10 gust 15 rain 10 % no thunder mixed kit 25 dry clean compatible intakes none relaxed tight purged nozzle tested exp 2099-01-01'

/** Whether foam may be sprayed after each of several messages. */
async function sprayAfter(seamhand: Seamhand, texts: readonly string[], question: Question = {}) {
  for (const text of texts) await seamhand.ask(text, question)
  const { outcome, findings } = await seamhand.ask('can we spray now?', question)
  return { outcome, startUp: (findings as readonly { readonly rule: string }[]).find(({ rule }) => rule === 'start-up') }
}

describe('a test spray that was bad (common practice, no source)', () => {
  it('is not unsaid by the word: only a good one is, or a start-up anew', async () => {
    const seamhand = await open({ weather: 'none' })
    expect(await sprayAfter(seamhand, [ready])).toMatchObject({ outcome: 'go' })
    expect(await sprayAfter(seamhand, ['foam streaks'])).toMatchObject({ outcome: 'no-go', startUp: { value: false, fix: 'test:spray' } })
    expect(await sprayAfter(seamhand, ['spray tight purged nozzle tested'])).toMatchObject({ outcome: 'no-go', startUp: { outcome: 'no-go' } })
    const { text } = await seamhand.ask('spray tested')
    expect(text).toContain('make a test spray and log it: foam 45 s even')
    expect(await sprayAfter(seamhand, ['foam 60 s even'])).toMatchObject({ outcome: 'go' })

    await seamhand.ask('foam dark')
    await seamhand.ask('spray start')
    expect(await sprayAfter(seamhand, [])).toMatchObject({ outcome: 'unknown', startUp: { fix: 'state:tight' } })
    expect(await sprayAfter(seamhand, ['spray tight purged nozzle tested'])).toMatchObject({ outcome: 'go' })
    expect((await verifySite(seamhand.store, { workspace: 'local', site: 'demo' }, []))?.firstBad).toBeNull()
  })

  it('the word takes back what the word said, and an undone test is none', async () => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask(ready)
    expect(await sprayAfter(seamhand, ['spray no tested'])).toMatchObject({ outcome: 'no-go' })
    expect(await sprayAfter(seamhand, ['spray tested'])).toMatchObject({ outcome: 'go' })
    const { logged } = await seamhand.ask('foam streaks')
    expect(await sprayAfter(seamhand, [`undo ${logged[0]}`])).toMatchObject({ outcome: 'go' })
  })

  it.each([
    ['foam 18 s even', 'fast', 'no-go'],
    ['foam 23 s even', 'good', 'go'],
    ['foam 4 s even', 'fast', 'no-go'],
    ['foam 300 s even', 'cold', 'no-go'],
    ['foam 4 s dark', 'iso-rich', 'no-go']
  ])('%s on a deck of 20 °C, where the limits sheet says 57 s: %s', async (text, verdict, outcome) => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask('spray deck 20')
    const said = await seamhand.ask(text)
    expect(said.outcome).toBe(outcome)
    expect(numbersOf(said).verdict).toBe(verdict)
  })

  it.each([
    ['foam 9 s even', 'fast'],
    ['foam 10 s even', 'good'],
    ['foam 135 s even', 'good'],
    ['foam 136 s even', 'cold']
  ])('%s on a deck nobody measured is judged by 30…90 s: %s', async (text, verdict) => {
    expect(numbersOf(await (await open({ weather: 'none' })).ask(text)).verdict).toBe(verdict)
  })

  it.each([
    ['en', 'gelled far too fast', 'by the limits sheet, not measured'],
    ['es', 'gelificó demasiado rápido', 'según la hoja de límites, sin medir'],
    ['fr', 'prise bien trop rapide', 'selon la fiche de limites, non mesuré']
  ] as const)('says in %s that it was too fast, and whose open time it is', async (lang, fast, ofSheet) => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask('spray deck 20')
    expect((await seamhand.ask('foam 4 s even', { lang })).text).toContain(fast)
    expect((await seamhand.ask('foam even', { lang })).text).toContain(ofSheet)
    expect((await seamhand.ask('foam 60 s even', { lang })).text).not.toContain(ofSheet)
  })
})

describe('a kit that empties unevenly (common practice, no source)', () => {
  it('stops spraying until a good test spray, whatever kit comes next', async () => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask(ready.replace('kit 25', 'kit K7 iso 25 resin 25'))
    const kit = await seamhand.ask('kit K7 left 20 12 %')
    expect(kit).toMatchObject({ outcome: 'no-go', binding: 'start-up' })
    const [head, next] = kit.text.split('\n')
    expect(head).toContain('NO-GO')
    expect(next).toContain('K7 empties unevenly')
    expect(await sprayAfter(seamhand, ['spray tested'])).toMatchObject({ outcome: 'no-go', startUp: { value: false } })
    expect(await sprayAfter(seamhand, ['kit K8 iso 25 resin 25 mixed exp 2099-01-01', 'spray tested'])).toMatchObject({ outcome: 'no-go' })
    expect(await sprayAfter(seamhand, ['foam 60 s even'])).toMatchObject({ outcome: 'go' })
    expect((await verifySite(seamhand.store, { workspace: 'local', site: 'demo' }, []))?.firstBad).toBeNull()
  })

  it('stays so over night and through a start-up, until it is tested', async () => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.askAll([ready, 'kit left 20 12 %'])
    const next = { at: '2026-05-05T08:00:00Z' }
    expect(await sprayAfter(seamhand, [ready.replace('mixed', 'start mixed')], next)).toMatchObject({ outcome: 'no-go' })
    expect(await sprayAfter(seamhand, ['foam 60 s even'], next)).toMatchObject({ outcome: 'go' })
    expect(numbersOf(await seamhand.ask('kit', next)).kits).toMatchObject([{ offRatio: true, stopped: false }])
  })

  it('what was left can be corrected, and then nothing is off', async () => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask(ready)
    const { logged } = await seamhand.ask('kit left 20 12 %')
    expect(await sprayAfter(seamhand, [`correct ${logged[0]} left 20 18 %`])).toMatchObject({ outcome: 'go' })
    expect(await sprayAfter(seamhand, [`correct ${logged[0]} left 20 9 %`])).toMatchObject({ outcome: 'no-go' })
    expect((await verifySite(seamhand.store, { workspace: 'local', site: 'demo' }, []))?.firstBad).toBeNull()
  })

  it('is said after what was asked of another kit', async () => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask('kit K7 left 20 12 %')
    const lines = (await seamhand.ask('kit K10 iso 15 resin 15 mixed')).text.split('\n')
    expect(lines[0]).toContain('NO-GO: kit K10')
    expect(lines[1]).toContain('iso 15 °C')
    expect(lines.findIndex((line) => line.includes('K7 empties unevenly'))).toBeGreaterThan(1)
  })
})

describe('the conditions of a coupon', () => {
  it('tell what nobody read as estimates, and nothing of what is not known', async () => {
    const seamhand = await open({ weather: 'sample' })
    await seamhand.ask('weld air 20 wind 5')
    await seamhand.ask('weld robot 41 mm film')
    const conditions = async () => (await seamhand.entries()).findLast(({ type }) => type === 'coupon')?.data.conditions
    expect(await conditions()).toMatchObject({ airC: 20, windKmh: 5, estimated: ['sheetC', 'cloudPct'] })
    await seamhand.ask('weld sheet 25')
    await seamhand.ask('weld robot 41 mm film')
    expect(await conditions()).toMatchObject({ sheetC: 25, estimated: ['cloudPct'] })
  })

  it('stand in a record with them named', () => {
    const how: How = { lang: 'en', units: 'metric', zone: 'Europe/Berlin' }
    const data = { conditions: { airC: 20, sheetC: 31, cloudPct: 40, estimated: ['sheetC', 'cloudPct'] } }
    expect(dataWords(data, how, texts.en.record)).toMatch(/estimates: sheet, cloud\)$/)
  })
})
