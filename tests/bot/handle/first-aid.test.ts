import { describe, expect, it } from 'vitest'
import { mayBeHurt } from '../../../src/bot/words/first-aid.js'
import { seamhands } from '../../support/seamhand.js'

const open = seamhands()

// First aid as it is usually taught, from memory: help first, rinse with water, cool a burn, call for help.
describe('a message of somebody hurt', () => {
  it.each([
    ['my hands burn from the foam, what now?', 'en', 'rinse at once'],
    ['me cayó espuma en los ojos, ¿qué hago?', 'es', 'enjuagar enseguida'],
    ["j'ai de la mousse dans l'œil", 'fr', 'rincez aussitôt']
  ] as const)('%s', async (text, lang, words) => {
    const reply = await (await open()).ask(text, { lang })
    expect(reply.ok).toBe(false)
    // The second line, right below what was not understood.
    expect(reply.text.split('\n')[1]).toContain(words)
  })

  it('is no message that is merely wrong', () => {
    for (const text of ['sprai', 'weld robot 41 mm scorched', 'probe 3 fixt', 'quemado']) expect(mayBeHurt(text), text).toBe(false)
  })
})
