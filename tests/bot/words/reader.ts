import { expect } from 'vitest'
import type { Refusal } from '../../../src/bot/answer.js'
import { readWords } from '../../../src/bot/words/read.js'
import type { Reader, Said } from '../../../src/bot/words/said.js'

/** 2026-05-04 10:00 in Berlin, summer time. */
export const now = 1777881600
export const metric: Reader = { units: 'metric', zone: 'Europe/Berlin', now }
export const us: Reader = { ...metric, units: 'us' }

/** What a message says; fails the test when it is refused. */
export function said(text: string, reader: Reader = metric): Said {
  const read = readWords(text, reader)
  if (!read.ok) expect.fail(`${text}: ${JSON.stringify(read.refusal)}`)
  return read.said
}

/** Why a message is refused; fails the test when it is not. */
export function refused(text: string, reader: Reader = metric): Refusal {
  const read = readWords(text, reader)
  if (read.ok) expect.fail(`${text}: ${JSON.stringify(read.said)}`)
  return read.refusal
}
