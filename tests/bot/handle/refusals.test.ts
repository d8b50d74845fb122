import { describe, expect, it } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { StoreError } from '../../../src/bot/ports.js'
import { respond } from '../../../src/bot/respond.js'
import { draw } from '../../../src/wiring/papers.js'
import { blockProblems } from '../../support/blocks.js'
import { instantOf, morning, type Question, type Seamhand, seamhands } from '../../support/seamhand.js'

const open = seamhands()

interface Refused extends Question {
  readonly text: string
  readonly code: string
  readonly word?: string | null
  readonly before?: readonly string[]
}

/** Every code of outside contract §4 with exit 2 that a message can meet, and the word at fault. */
const refused: readonly Refused[] = [
  { text: '', code: 'empty', word: null },
  { text: ' \t\n', code: 'empty', word: null },
  { text: 'x'.repeat(2001), code: 'too-long', word: null },
  { text: 'frobnicate 12', code: 'unknown-command', word: 'frobnicate' },
  { text: 'air 20 frob', code: 'unknown-word', word: 'frob' },
  { text: 'spray air', code: 'missing', word: 'air' },
  { text: 'foam', code: 'missing', word: null },
  { text: 'weld robot film', code: 'missing', word: 'width' },
  { text: 'air 1.2.3', code: 'bad-number', word: '1.2.3' },
  { text: 'air ٢٠', code: 'bad-number', word: '٢٠' },
  { text: 'strip 1,250', code: 'ambiguous-number', word: '1,250' },
  { text: 'air 20 km/h', code: 'wrong-unit' },
  { text: 'air 900', code: 'out-of-range' },
  { text: 'air rh 140', code: 'out-of-range' },
  { text: 'air rh 0', code: 'out-of-range' },
  { text: 'air wind 20 gust 10', code: 'inconsistent', word: 'gust' },
  { text: 'strip 0.05 m', code: 'inconsistent', word: null },
  { text: 'air 20 air 21', code: 'duplicate', word: 'air' },
  { text: 'probe 9 fixed', code: 'not-found', word: '9' },
  { text: 'weld R9', code: 'not-found', word: 'R9' },
  { text: 'undo', code: 'not-found', word: null },
  { text: 'undo demo-99', code: 'not-found', word: 'demo-99' },
  { text: 'undo north-1', code: 'not-found', word: 'north-1' },
  { text: 'site limits no-such-sheet', code: 'not-found', word: 'no-such-sheet' },
  { text: 'probe 1 passed', code: 'wrong-state', word: 'passed', before: ['probe course 4 40 mm'] },
  { text: 'probe 1 failed', code: 'wrong-state', word: 'failed', before: ['probe course 4 40 mm'] },
  { text: 'probe 1 fixed', code: 'wrong-state', word: 'fixed', before: ['probe course 4 40 mm', 'probe 1 fixed'] },
  { text: 'probe 1 fixed', code: 'wrong-state', word: 'fixed', before: ['probe course 4 40 mm', 'probe 1 fixed', 'probe 1 passed'] },
  { text: 'site new demo at 50,8 zone Europe/Berlin', code: 'wrong-state', word: 'demo' },
  { text: 'site new demo at 50,8 zone Europe/Berlin', code: 'wrong-state', word: 'demo', log: false },
  { text: 'spray override hurry', code: 'not-allowed', word: 'override', role: 'crew' },
  { text: 'site morning 06:00', code: 'not-allowed', word: 'site', role: 'crew' },
  { text: 'site new north at 51,0 zone Europe/London', code: 'not-allowed', word: 'new', role: 'crew' },
  { text: 'spray', code: 'no-site', word: 'nowhere', site: 'nowhere' },
  { text: 'site nowhere', code: 'no-site', word: 'nowhere' },
  { text: 'air 20', code: 'no-site', word: null, before: ['site new north at 51,0 zone Europe/London'] },
  { text: 'air 20', code: 'wrong-state', word: 'demo', before: ['site demo closed'] },
  { text: 'air 20 @10:06', code: 'out-of-range', word: '@10:06' }
]

describe('a refusal', () => {
  it.each(refused)('$code: $text', async ({ text, code, word, before = [], ...question }) => {
    const seamhand = await open()
    for (const each of before) expect((await seamhand.ask(each)).ok, each).toBe(true)
    const head = await seamhand.head()
    const reply = await seamhand.ask(text, question)

    expect(reply.error?.code).toBe(code)
    if (word !== undefined) expect(reply.error?.word).toBe(word)
    expect(reply.ok).toBe(false)
    expect(reply.error?.message).not.toBe('')
    expect(reply.error?.message).not.toContain('a word')
    expect(await seamhand.head()).toEqual(head)
    expect(seamhand.bugs).toEqual([])
  })

  it('says what was understood, in JSON units, and logs none of it', async () => {
    const seamhand = await open()
    const reply = await seamhand.ask('spray air 68 deck 64.4 rh 60 dry frobnicate', { units: 'us' })

    expect(reply.error).toMatchObject({
      code: 'unknown-word',
      word: 'frobnicate',
      understood: [
        { label: 'air', value: 20, unit: 'C' },
        { label: 'substrate', value: 18, unit: 'C' },
        { label: 'rh', value: 60, unit: '%' },
        { label: 'dry', value: true, unit: null }
      ]
    })
    expect(reply.error?.usage).toContain('spray')
    expect((await seamhand.head()).seq).toBe(0)
  })

  it('on the way (a domain no) says what was understood as well', async () => {
    const reply = await (await open()).ask('probe 7 fixed')

    expect(reply.error?.understood).toEqual([
      { label: 'step', value: 'fixed', unit: null },
      { label: 'void', value: 7, unit: null }
    ])
  })
})

describe('a closed site', () => {
  it('still shows itself, its voids and its welders, and opens again', async () => {
    const seamhand = await open()
    await seamhand.askAll(['weld robot 41 film', 'probe course 4 40 mm', 'probe 1 fixed', 'probe 1 passed', 'site demo closed'])

    for (const text of ['site', 'probe list', 'weld robot', 'help', 'strip 2 m']) expect((await seamhand.ask(text)).ok, text).toBe(true)
    for (const text of ['spray', 'kit K1 25', 'undo', 'laid 4 m2']) expect((await seamhand.ask(text)).error?.code, text).toBe('wrong-state')
    expect((await seamhand.ask('site demo open')).ok).toBe(true)
    expect((await seamhand.ask('air 12')).ok).toBe(true)
  })
})

/** What a phone, a bot or somebody bored may send: issue list of bad input, and code points that break things. */
const hostile = [
  '<!channel>',
  '<!channel> spray',
  'spray <!here>',
  'spray <@U123> dry',
  'spray https://example.invalid/?air=20',
  '*spray* _dry_',
  '`spray`',
  'spray air 1e3',
  'spray air nan',
  'spray air Infinity',
  'spray air 20,5,5',
  'spray air 1.000,5',
  'spray air ２０',
  'spray air 二十',
  'spray air −0',
  'spray rh 100.0000001',
  'spray air 99999999999999999999999999',
  'spray air 0x20',
  '\u0000spray',
  'spray\u0007 dry',
  'spray \u202edry',
  'spray \u200bdry',
  '\ud800spray',
  'spray constructor',
  'spray __proto__ 20',
  'toString',
  'kit __proto__ 20',
  'weld constructor1 41 film',
  'kit __proto__1 20',
  "kit K1 lot '; drop table entries; --",
  'laid 1e9 m2',
  'probe course 4 end 3.2 m 40 mm '.repeat(60),
  'spray air 20 '.repeat(150),
  `spray ${'air '.repeat(400)}`,
  `/seamhand ${'seamhand '.repeat(200)}`,
  '/'.repeat(2000),
  '@'.repeat(2000),
  '9'.repeat(2000),
  `spray ${'½'.repeat(1900)}`,
  'x'.repeat(10_000),
  '🙂'.repeat(2000)
]

/** Text of blocks that the chat reads markup in. */
function marked(blocks: unknown): string {
  return JSON.stringify(blocks, (_key, value: { type?: string } | null) => (value?.type === 'plain_text' ? null : value))
}

describe('hostile input', () => {
  it.each(hostile.map((text) => [text.slice(0, 40), text]))('%j is answered, with nothing logged where it is refused', async (_name, text) => {
    const seamhand = await open()
    const reply = await seamhand.ask(text)

    expect(seamhand.bugs).toEqual([])
    // Plain text of a block is not parsed by the chat; everything else may hold no mention and no link.
    expect(`${reply.text}${marked(reply.blocks)}`).not.toMatch(/<[!@#]|https?:\/\//)
    expect(blockProblems(reply)).toEqual([])
    if (!reply.ok) expect((await seamhand.head()).seq).toBe(0)
  })
})

/** The ports of a Seamhand with a part of its store broken. */
async function brokenAsk(seamhand: Seamhand, failing: Partial<Seamhand['store']>, text = 'air 20') {
  const reports: unknown[] = []
  const { reply } = await respond(
    {
      text,
      at: instantOf(morning),
      workspace: 'local',
      site: null,
      channel: null,
      user: 'ask',
      role: 'supervisor',
      via: 'ask',
      lang: null,
      units: null,
      log: true,
      claim: null
    },
    {
      store: { ...seamhand.store, ...failing },
      weather: fixedWeather(null),
      sheets: readSheets(null),
      draw,
      lang: 'en',
      units: 'metric',
      report: (error) => `bug-${reports.push(error)}`
    }
  )
  return { reply, reports }
}

describe('when the outside or the program fails', () => {
  it('a store that is away is said so, with why, and is no bug', async () => {
    const seamhand = await open()
    const append = async () => {
      throw new StoreError('the disk of the store is full')
    }
    const { reply, reports } = await brokenAsk(seamhand, { append })

    expect(reply.error).toMatchObject({ code: 'store', ref: null, message: 'The log cannot be reached: the disk of the store is full.' })
    expect(reports).toEqual([])
  })

  it('a bug is reported and its reference said, and nothing was logged', async () => {
    const seamhand = await open()
    const person = async () => {
      throw new TypeError('a bug')
    }
    const { reply, reports } = await brokenAsk(seamhand, { person })

    expect(reply.error).toMatchObject({ code: 'internal', ref: 'bug-1' })
    expect(reply.error?.message).toContain('bug-1')
    expect(reports).toHaveLength(1)
    expect((await seamhand.head()).seq).toBe(0)
  })
})
