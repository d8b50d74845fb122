import { describe, expect, test } from 'vitest'
import { readWords } from '../../../../src/bot/words/read.js'
import { fixture } from '../../../support/fixture.js'
import { metric } from '../reader.js'
import { logsNothing } from './logs-nothing.js'

interface HeldOut {
  readonly lang: 'en' | 'es' | 'fr'
  readonly text: string
  readonly command: string
  readonly with?: Readonly<Record<string, number>>
}

const { questions } = JSON.parse(fixture('questions-held-out.json')) as { readonly questions: readonly HeldOut[] }

const read = questions.map((question) => ({ ...question, read: readWords(question.text, metric) }))
const reached = read.filter(({ read, command }) => read.ok && read.said.command === command)

describe('a hundred questions that the grammar was not written with', () => {
  test('there are a hundred', () => {
    expect(['en', 'es', 'fr'].map((lang) => questions.filter((question) => question.lang === lang).length)).toEqual([34, 33, 33])
  })

  test('93 reach their command: 95 when first measured, two given up when unknown words were no longer let pass', () => {
    expect(reached.length).toBeGreaterThanOrEqual(93)
  })

  test('the others are refused, none is answered by another command', () => {
    expect(read.flatMap(({ text, command, read }) => (read.ok && read.said.command !== command ? [text] : []))).toEqual([])
  })

  test('those that reach a strip bring their numbers', () => {
    for (const { text, read: each, with: numbers } of reached) {
      if (numbers !== undefined && each.ok) expect(each.said, text).toMatchObject({ strip: numbers })
    }
  })

  test.each(read.map((each) => [each.text, each.read] as const))('logs nothing: %s', (_, each) => {
    expect(!each.ok || logsNothing(each.said)).toBe(true)
  })

  test('what is missed is refused with the two nearest commands', () => {
    for (const { text, read: each } of read) {
      if (!each.ok && each.refusal.code === 'unknown-command') expect(each.refusal.detail.nearest, text).toHaveLength(2)
    }
  })
})
