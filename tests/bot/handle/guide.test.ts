import { describe, expect, it } from 'vitest'
import type { Lang } from '../../../src/bot/answer.js'
import { guideSections } from '../../../src/bot/text/guide-words.js'
import { texts } from '../../../src/bot/text/index.js'
import { commandNames } from '../../../src/bot/text/usages.js'
import { guideExample } from '../../../src/bot/views/guide.js'
import { readWords } from '../../../src/bot/words/read.js'
import { blockProblems } from '../../support/blocks.js'
import { seamhands } from '../../support/seamhand.js'
import { metric } from '../words/reader.js'

const open = seamhands()
const asking = { en: 'help guide', es: 'ayuda guía', fr: 'aide guide' } as const satisfies Record<Lang, string>
const langs = ['en', 'es', 'fr'] as const

describe.each(langs)('the page for a crew in %s', (lang) => {
  const text = texts[lang]

  it('stands on one page: every section, example, question and caution of it', async () => {
    const reply = await (await open()).ask(asking[lang], { lang, role: 'crew' })
    const page = reply.text.replace(/\u00a0/g, ' ')

    expect(reply.ok).toBe(true)
    expect(blockProblems(reply)).toEqual([])
    expect(page).not.toContain('…\n')
    for (const { id, commands, caution } of guideSections) {
      expect(page).toContain(text.guide.sections[id])
      for (const command of commands) expect(page).toContain(guideExample(command, text))
      if (caution !== null) expect(page).toContain(text.cautions[caution])
    }
    for (const question of text.guide.questions) expect(page).toContain(question)
    expect(page).toContain(text.help.more)
  })

  it('holds examples that run as they stand, one after another', async () => {
    const seamhand = await open()
    for (const { commands } of guideSections) {
      for (const command of commands) {
        const reply = await seamhand.ask(guideExample(command, text), { lang, role: 'crew', weather: 'sample' })
        expect(reply.error, guideExample(command, text)).toBeNull()
        expect(reply.command).toBe(command)
      }
    }
    expect(seamhand.bugs).toEqual([])
  })

  it('holds questions that run and log no facts', async () => {
    const seamhand = await open()
    const head = await seamhand.head()
    const commands: (string | null)[] = []
    for (const question of text.guide.questions) commands.push((await seamhand.ask(question, { lang, role: 'crew', weather: 'sample' })).command)

    expect(commands).toEqual(['day', 'kit', 'strip', 'probe'])
    expect(await seamhand.head()).toEqual(head)
  })

  it.each(commandNames)('and help %s gives an example that is understood', (command) => {
    expect(readWords(text.usages[command].example, metric)).toMatchObject({ ok: true })
  })
})

describe('a kit asked about in plain words', () => {
  it('is shown and not logged', async () => {
    const seamhand = await open()
    await seamhand.askAll(['kit K3 18', 'kit K7 25'])
    const head = await seamhand.head()
    const reply = await seamhand.ask('is kit 3 warm?')

    expect(reply).toMatchObject({ ok: true, command: 'kit', outcome: null, findings: [], logged: [], numbers: { kit: 'K3', isoC: 18, resinC: 18 } })
    expect((await seamhand.ask('is kit 7 warm?')).outcome).toBe((await seamhand.ask('kit')).outcome)
    expect((await seamhand.ask('is kit 9 warm?')).error).toMatchObject({ code: 'not-found', word: 'K9' })
    expect(await seamhand.head()).toEqual(head)
  })
})

describe('what is not understood', () => {
  it.each(langs)('shows two commands, what they do and an example in %s', async (lang) => {
    const text = texts[lang]
    const reply = await (await open()).ask('is void 3 fixed?', { lang })
    const shown = reply.text.replace(/\u00a0/g, ' ')

    expect(reply.error?.code).toBe('unknown-command')
    for (const command of ['probe', 'punch'] as const) {
      expect(shown).toContain(text.commands[command])
      expect(shown).toContain(text.usages[command].example)
    }
  })
})
