import { describe, expect, test } from 'vitest'
import { readWords } from '../../../../src/bot/words/read.js'
import { metric, said } from '../reader.js'
import { questions } from './questions.js'

const cases = questions.flatMap(([asks, phrasings]) => phrasings.map((text) => [text, asks] as const))

describe('a plain question asks for its command', () => {
  test.each(cases)('%s', (text, asks) => {
    expect(said(text)).toEqual(asks)
  })

  test('there are more than two hundred, in three languages', () => {
    expect(cases.length).toBeGreaterThanOrEqual(200)
    expect(new Set(cases.map(([text]) => text)).size).toBe(cases.length)
  })

  test('none has a time of its own', () => {
    for (const [text] of cases) expect(readWords(text, metric)).toMatchObject({ ok: true, at: null })
  })
})
