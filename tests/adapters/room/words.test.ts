import { describe, expect, it } from 'vitest'
import { roomCommands } from '../../../src/adapters/room/commands.js'
import { langOf, type RoomLang, roomSays, roomWords, type WordName } from '../../../src/adapters/room/words/index.js'
import { manifestOf, messageShortcuts } from '../../../src/adapters/slack/manifest.js'
import { readWords } from '../../../src/bot/words/read.js'

const langs = Object.keys(roomWords) as readonly RoomLang[]
const names = Object.keys(roomWords.en) as readonly WordName[]
const blanks = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map((match) => match[1]).sort()

describe('words of the room', () => {
  it('are there in every language, with the same blanks', () => {
    for (const lang of langs)
      for (const name of names) {
        expect(roomWords[lang][name].length, `${lang} ${name}`).toBeGreaterThan(0)
        expect(blanks(roomWords[lang][name]), `${lang} ${name}`).toEqual(blanks(roomWords.en[name]))
      }
  })

  it('are what outsiders find them by (outside contract §12): in English to the letter, elsewhere with it in them', () => {
    const found = { sitesName: 'Sites', messagesName: 'Messages', messageName: 'Message', sendName: 'Send', homeName: 'Home' } as const
    expect(roomWords.en).toMatchObject({ ...found, sites: 'Sites', send: 'Send', home: 'Home' })
    for (const lang of langs)
      for (const [name, english] of Object.entries(found)) expect(roomWords[lang][name as keyof typeof found], lang).toContain(english)
  })

  it('keep what belongs before : ; ? ! together in French', () => {
    for (const name of names) expect(roomWords.fr[name].replace(/https?:|T06:10:00Z/g, ''), name).not.toMatch(/[^\s\u00a0«](?:[;?!»]|:(?!\w))/)
  })

  it('offer examples that Seamhand understands', () => {
    const asked = { units: 'metric', zone: 'Europe/Berlin', now: 1_777_881_600 } as const
    for (const lang of langs)
      for (const command of roomCommands) {
        const [, example = ''] = roomWords[lang][`hint-${command}`].split(/: /)
        const text = `/${command} ${example}`
        expect(readWords(text, asked), `${lang} ${text}`).toMatchObject({ ok: true })
      }
  })

  it('name every command of the manifest and every shortcut', () => {
    expect(roomCommands.map((name) => `/${name}`).sort()).toEqual(
      manifestOf(null)
        .features.slash_commands.map(({ command }) => command)
        .sort()
    )
    for (const { callbackId, name } of messageShortcuts) expect(roomWords.en[`shortcut-${callbackId}`]).toBe(name)
  })

  it('fill their blanks, and fall back to the language of the server', () => {
    expect(roomSays('es', 'whySilent', { seconds: 3 })).toBe('sin respuesta en 3 s')
    expect(roomSays('fr', 'picked')).toBe('Photo : {name}')
    expect([langOf('fr', 'en'), langOf('de', 'es'), langOf(null, 'es')]).toEqual(['fr', 'es', 'es'])
  })
})
