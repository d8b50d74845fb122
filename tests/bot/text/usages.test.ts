import { describe, expect, it } from 'vitest'
import { texts } from '../../../src/bot/text/index.js'
import { commandNames } from '../../../src/bot/text/usages.js'
import { readWords } from '../../../src/bot/words/read.js'
import { morning } from '../../support/answers.js'

describe.each(Object.entries(texts))('examples in %s', (_lang, { usages }) => {
  it.each(commandNames)('%s: its example is understood as it stands, in both systems', (name) => {
    for (const units of ['metric', 'us'] as const) {
      const read = readWords(usages[name].example, { units, zone: 'Europe/Berlin', now: morning })

      expect(read).toMatchObject({ ok: true })
      expect(read.ok && read.said.command.split(' ')[0]).toBe(name)
    }
  })
})
