import { describe, expect, it } from 'vitest'
import { seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('a fact in plain words', () => {
  it.each([
    ['it is raining on us', 'en', 'rain is falling: /air rain'],
    ['está lloviendo', 'es', 'está lloviendo: /air lluvia'],
    ['il pleut', 'fr', 'il pleut\u00a0: /air pluie'],
    ['roof is wet', 'en', 'roof wet: /spray deck wet']
  ] as const)('%s: logs nothing and names what to send, before any command', async (text, lang, words) => {
    const reply = await (await open()).ask(text, { lang })
    const lines = reply.text.split('\n')

    expect(reply).toMatchObject({ ok: false, logged: [], error: { code: 'unknown-command' } })
    expect(lines[2]).toBe(words)
    expect(reply.text).toMatch(/Nothing was logged|No se anotó nada|Rien n’a été noté/)
  })

  it.each([
    ['there is lightning', 'en', 'off the roof'],
    ['hay rayos', 'es', 'fuera de la cubierta'],
    ["il y a de l'orage", 'fr', 'quitter le toit'],
    ['kit K7 24 lightning', 'en', 'off the roof']
  ] as const)('%s: off the roof is the first line', async (text, lang, words) => {
    const reply = await (await open()).ask(text, { lang })

    expect(reply.ok).toBe(false)
    expect(reply.text.split('\n')[0]).toContain(words)
    expect(JSON.stringify(reply.blocks[0])).toContain(words)
  })

  it('what is sent as told is logged and decides', async () => {
    const seamhand = await open()
    const told = await seamhand.ask('there is thunder')
    const message = /thunder or lightning: (.+)/.exec(told.text)?.[1] ?? ''
    const reply = await seamhand.ask(message)

    expect(reply.logged).toHaveLength(1)
    expect(reply.activities).toMatchObject({ people: 'no-go' })
  })
})
