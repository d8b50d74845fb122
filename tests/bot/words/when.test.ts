import { describe, expect, test } from 'vitest'
import { readWords } from '../../../src/bot/words/read.js'
import type { Reader } from '../../../src/bot/words/said.js'
import { isDate } from '../../../src/bot/words/when.js'
import { fromIso, toIso } from '../../../src/core/instant.js'
import { metric, refused, said } from './reader.js'

function at(text: string, reader: Reader = metric): string | null {
  const read = readWords(text, reader)
  return read.ok && read.at !== null ? toIso(read.at) : null
}

function berlin(iso: string): Reader {
  return { ...metric, now: fromIso(iso) as number }
}

describe('@ dates an entry', () => {
  test.each([
    ['spray @07:30', '2026-05-04T05:30:00Z'],
    ['spray @7:30', '2026-05-04T05:30:00Z'],
    ['spray @07:30, dry', '2026-05-04T05:30:00Z'],
    ['weld robot @00:00 restart', '2026-05-03T22:00:00Z'],
    ['spray @10:05', '2026-05-04T08:05:00Z'],
    ['spray @2026-05-04T06:10:00Z', '2026-05-04T06:10:00Z'],
    ['spray @2026-05-03T23:10:00-05:00', '2026-05-04T04:10:00Z'],
    ['spray @2026-05-04T06:10Z dry', '2026-05-04T06:10:00Z'],
    ['kit K7 @2026-05-04t06:10:00.9z 25', '2026-05-04T06:10:00Z'],
    ['@07:30 spray', null],
    ['spray', null],
    ['spray @07:30 @07:30', '2026-05-04T05:30:00Z']
  ])('%s', (text, iso) => {
    expect(at(text)).toBe(iso)
  })

  // Europe/Berlin, 2026: clocks go on at 2026-03-29T01:00Z and back at 2026-10-25T01:00Z (IANA time zone database).
  test('an hour that is skipped is no time; of one that comes twice the later that has been', () => {
    expect(refused('spray @02:30', berlin('2026-03-29T10:00:00Z')).code).toBe('bad-number')
    expect(at('spray @02:30', berlin('2026-10-25T10:00:00Z'))).toBe('2026-10-25T01:30:00Z')
    expect(at('spray @02:30', berlin('2026-10-25T01:00:00Z'))).toBe('2026-10-25T00:30:00Z')
    expect(at('spray @03:30', berlin('2026-03-29T10:00:00Z'))).toBe('2026-03-29T01:30:00Z')
  })
})

describe('dates', () => {
  test.each([
    ['today', '2026-05-04'],
    ['hoy', '2026-05-04'],
    ["aujourd'hui", '2026-05-04'],
    ['aujourd’hui', '2026-05-04'],
    ['tomorrow', '2026-05-05'],
    ['mañana', '2026-05-05'],
    ['manana', '2026-05-05'],
    ['demain', '2026-05-05'],
    ['2028-02-29', '2028-02-29'],
    ['2099-01-01.', '2099-01-01']
  ])('exp %s', (text, expiresOn) => {
    expect(said(`kit exp ${text}`)).toEqual({ command: 'kit', kit: { name: null, data: { expiresOn } } })
  })

  test('today is the day of the site', () => {
    expect(said('kit exp today', berlin('2026-05-03T22:30:00Z'))).toMatchObject({ kit: { data: { expiresOn: '2026-05-04' } } })
  })

  test.each(['2026-02-29', '2026-04-31', '2026-00-10', '2026-10-00', '0000-01-01', '26-01-01', '2026-1-1', '1900-02-29'])('%s is no date', (text) => {
    expect(isDate(text)).toBe(false)
  })
})
