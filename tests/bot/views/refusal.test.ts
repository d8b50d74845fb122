import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { errorCodes, type Refusal } from '../../../src/bot/answer.js'
import { refusalMessage, speakRefusal } from '../../../src/bot/views/refusal.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'

function refusal(part: Partial<Refusal> & Pick<Refusal, 'code'>): Refusal {
  return { word: null, understood: [], detail: {}, ref: null, ...part }
}

describe('speakRefusal', () => {
  it.each(errorCodes)('%s says what was wrong, that nothing was logged and what to do', (code) => {
    for (const how of hows) {
      for (const part of [
        {},
        {
          word: 'frobnicate',
          detail: { label: 'gust', min: 0, max: 300, unit: 'km/h', nearest: ['gust', 'wind'], who: 'supervisor', state: 'open' },
          ref: 'r-1'
        }
      ]) {
        const spoken = speakRefusal(refusal({ code, ...part }), 'spray', 'spray [air T]', how)

        expect(blockProblems(spoken)).toEqual([])
        expect(spoken.message).toBe(refusalMessage(refusal({ code, ...part }), how))
        expect(spoken.message).not.toContain('\n')
        expect(spoken.text).toMatch(/Nothing was logged|No se anotó nada|Rien n’a été noté/)
        expect(spoken.text).toContain('spray [air T]')
      }
    }
  })

  it('no site: in a chat where to ask, at the terminal which option', () => {
    const said = (terminal: boolean) => speakRefusal(refusal({ code: 'no-site' }), null, '', metric, { hurt: false, terminal }).text
    expect(said(false)).toContain('Ask in the channel of the site')
    expect(said(false)).not.toContain('--site')
    expect(said(true)).toContain('--site NAME')
  })

  it('quotes the word, and says what was understood in the units of the person', () => {
    const understood = [
      { label: 'air', value: 20, unit: 'C' },
      { label: 'dry', value: true, unit: null },
      { label: 'rain', value: false, unit: null },
      { label: 'intakes', value: 'shut', unit: null }
    ]
    const { text } = speakRefusal(
      refusal({ code: 'unknown-word', word: 'drry', understood, detail: { nearest: ['dry'] } }),
      'spray',
      'spray [air T]',
      { ...metric, units: 'us' }
    )

    expect(text.split('\n').slice(0, 4)).toEqual([
      'Not understood: “drry”.',
      'Nothing was logged.',
      'Understood: air 68 °F · dry · rain: no · intakes shut',
      'Did you mean dry?'
    ])
  })

  it.each([
    ['out-of-range', '200', { label: 'air', min: -60, max: 60, unit: 'C' }, 'Out of range: “200” (air): from -60 °C to 60 °C.'],
    ['ambiguous-number', '1,250', { label: 'width' }, 'Ambiguous number: “1,250” (width). Write 1250 or 1.25.'],
    ['not-allowed', 'north-3', { who: 'author' }, 'Not allowed: only for the one who logged it.'],
    ['inconsistent', 'gust', { label: 'gust', other: 'wind' }, 'These do not go together: “gust” (gust) and wind.'],
    ['out-of-range', '@23:00', { label: 'time', max: '2026-05-04T06:15:00Z' }, 'Out of range: “@23:00” (time): at most 08:15.'],
    ['out-of-range', '0', { label: 'course', min: 1, unit: '' }, 'Out of range: “0” (course): at least 1.'],
    ['missing', 'length', { label: 'length' }, 'Missing: length.'],
    ['wrong-state', 'passed', { label: 'void', state: 'open' }, 'Not possible now: “passed” (void), open.'],
    ['no-site', 'nroth', { nearest: ['north'] }, 'No such site: “nroth”.']
  ] as const)('%s %s', (code, word, detail, message) => {
    expect(refusalMessage(refusal({ code, word, detail }), metric)).toBe(message)
  })

  it('reads an ambiguous number both ways in the language', () => {
    expect(refusalMessage(refusal({ code: 'ambiguous-number', word: '1.250' }), { ...metric, lang: 'fr' })).toContain('1250 ou 1,25')
  })

  it('shows the reference of a bug', () => {
    expect(refusalMessage(refusal({ code: 'internal', ref: 'r-42' }), metric)).toContain('r-42')
  })

  it('lets no word ping, link or format', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...errorCodes),
        fc.oneof(fc.string({ unit: 'binary', maxLength: 300 }), fc.constantFrom('<!channel>', '<@U1>', '*bold*', 'https://example.org')),
        (code, word) => {
          const typed = word.replace(/undefined|null|NaN|\[object/g, '')
          const part = {
            word: typed,
            detail: { label: typed, nearest: [typed], who: typed, state: typed },
            understood: [{ label: typed, value: typed, unit: null }]
          }

          expect(blockProblems(speakRefusal(refusal({ code, ...part }), 'weld', 'weld', metric))).toEqual([])
        }
      )
    )
  })
})
