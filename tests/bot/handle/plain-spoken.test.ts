import { describe, expect, it } from 'vitest'
import { blockProblems } from '../../support/blocks.js'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const head = (text: string) => text.split('\n')[0]

describe('a void passed on a weld that is still warm', () => {
  it.each([
    ['en', '△ WAIT until 10:11'],
    ['es', '△ ESPERAR hasta las 10:11'],
    ['fr', '△ ATTENDRE jusqu’à 10:11']
  ] as const)('%s: wait is the first thing said, and nowhere go', async (lang, words) => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm', { at: '10:00' })
    await bot.ask('probe 1 fixed', { at: '10:01' })
    const warm = await bot.ask('probe 1 passed', { at: '10:05', lang })

    expect(head(warm.text)).toContain(words)
    expect(JSON.stringify(warm.blocks[0])).toContain(words)
    expect(warm.text).not.toMatch(/✓|\bGO\b|SE PUEDE|ON Y VA/)
    expect(blockProblems(warm)).toEqual([])
    expect(head((await bot.ask('probe list', { at: '10:12', lang })).text)).toContain('✓')
  })

  it('stated cold it may be closed', async () => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'probe 1 fixed'], { at: '10:00' })

    expect(head((await bot.ask('probe 1 passed cooled', { at: '10:02' })).text)).toBe('✓ GO: close the area')
  })

  it('while another stands open no is said, and wait right below', async () => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'probe course 4 lap 9 m 40 mm', 'probe 1 fixed'], { at: '10:00' })
    const [first, second] = (await bot.ask('probe 1 passed', { at: '10:02' })).text.split('\n')

    expect(first).toBe('✕ NO-GO: close the area')
    expect(second).toContain('not cold yet')
  })
})

describe('a void by its number', () => {
  it('takes the step in the three languages', async () => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm')
    for (const [text, state] of [
      ['void 1 fixed', 'repaired'],
      ['falla 1 rechazada', 'open'],
      ['défaut 1 réparé', 'repaired'],
      ['Falla 1: pasa', 'passed']
    ] as const) {
      expect(numbersOf(await bot.ask(text)), text).toMatchObject({ void: 1, state })
    }
  })

  it('takes none in a question, and none without a number', async () => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm')
    for (const text of ['void 1 fixed?', '¿falla 1 reparada?', 'défaut 1 réparé ?', 'is void 1 fixed?', 'void fixed', 'voids 1 fixed']) {
      expect((await bot.ask(text)).logged, text).toEqual([])
    }
    expect(await bot.entries()).toHaveLength(1)
  })
})

describe('me', () => {
  it('answers in the new language, whichever it was', async () => {
    const bot = await open()
    for (const before of ['en', 'es', 'fr'] as const) {
      for (const [text, lang, words] of [
        ['me lang es', 'es', 'Sus ajustes'],
        ['me lang fr', 'fr', 'Vos réglages'],
        ['yo idioma en', 'en', 'Your settings']
      ] as const) {
        const reply = await bot.ask(text, { lang: before })
        expect([reply.lang, head(reply.text)], text).toEqual([lang, words])
      }
    }
  })
})

describe('where nothing makes a name of a mention', () => {
  it('shows the id that can be typed back', async () => {
    const bot = await open()
    const reply = await bot.ask('role @U0123ABCD supervisor')

    expect(reply.text).toContain('@U0123ABCD is supervisor')
    expect(JSON.stringify(reply)).not.toContain('<@')
    expect(JSON.stringify(await bot.ask('role'))).not.toContain('<@')
    expect(JSON.stringify(await bot.ask('site units us', { role: 'crew', user: 'U9' }))).not.toContain('<@')
  })
})

describe('correct', () => {
  it('shows what an entry said and what it says now', async () => {
    const bot = await open()
    await bot.ask('air 20 rh 50')
    const first = await bot.ask('correct demo-1 air 22')

    expect(numbersOf(first)).toEqual({ corrected: 'demo-1', was: { airC: 20 }, now: { airC: 22 } })
    expect(first.text.split('\n').slice(0, 3)).toEqual(['Corrected: demo-1', 'was air: 20 °C', 'is air: 22 °C'])
    const second = await bot.ask('correct demo-1 air 23', { lang: 'es' })
    expect(second.text.split('\n').slice(1, 3)).toEqual(['antes aire: 22 °C', 'ahora aire: 23 °C'])
  })

  it('names a lot as it was typed', async () => {
    const bot = await open()
    await bot.ask('kit K7 24 lot A6')

    expect((await bot.ask('correct demo-1 lot B7')).text).toContain('was lot: A6\nis lot: B7')
  })
})

describe('a step that is not possible', () => {
  it.each([
    ['en', '“passed” (void), open since 10:00'],
    ['es', '«pasa» (falla), abierta desde 10:00'],
    ['fr', '« bon » (défaut), ouvert depuis 10:00']
  ] as const)('%s is named in the language, in JSON as ever', async (lang, words) => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm')
    const reply = await bot.ask('probe 1 passed', { lang })

    expect(reply.error).toMatchObject({ code: 'wrong-state', word: 'passed' })
    expect(reply.text.replaceAll('\u00a0', ' ')).toContain(words)
  })

  it.each(['es', 'fr'] as const)('%s: no English word stands in it', async (lang) => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'punch flange loose'])
    for (const text of ['probe 1 failed', 'punch 1 open', 'fire done', 'weld robot probed', 'weld robot released', 'probe 1 fixed @09:00']) {
      const { error } = await bot.ask(text, { lang })

      expect(error?.message, text).not.toMatch(/\b(passed|failed|fixed|open|done|probed|released|repaired)\b/)
    }
  })
})

describe('numbers for people', () => {
  it('several strips are told apart from all of them, with how many a roll gives', async () => {
    const lines = async (lang: 'en' | 'es' | 'fr') =>
      (await (await open()).ask('strip 2 m gap 6 mm x4', { lang })).text.replaceAll('\u00a0', ' ').split('\n')
    // 4 × 4557.079633 mm; 20 m ÷ 2150 mm = 9.3.
    expect(await lines('en')).toEqual(expect.arrayContaining(['weld each 4557 mm: robot 4200 mm, hand 357 mm', 'from a roll of 20 m: 9 strips']))
    expect((await lines('en')).find((line) => line.startsWith('weld together'))).toContain('18.23 m')
    expect(await lines('es')).toContain('soldar cada una 4557 mm: robot 4200 mm, a mano 357 mm')
    expect(await lines('fr')).toContain('d’un rouleau de 20 m : 9 bandes')
  })

  it('a tape is read to the millimetre, JSON keeps every digit', async () => {
    const reply = await (await open()).ask('strip 2 m gap 6')

    expect(reply.text).toContain('weld 4557 mm: robot 4200 mm, hand 357 mm')
    expect(numbersOf(reply)).toMatchObject({ weldPerimeterMm: 4557.079633 })
  })
})
