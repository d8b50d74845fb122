import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { texts } from '../../../src/bot/text/index.js'
import { counted, plural } from '../../../src/bot/text/plural.js'
import type { Wrong } from '../../../src/bot/text/text.js'
import { commandNames, usages } from '../../../src/bot/text/usages.js'
import { langs } from '../../support/answers.js'

const wrong: Wrong = { word: 'W', label: 'L', other: 'O', from: '1', to: '2', who: 'W', state: 'S', ref: 'R', whole: '1250', decimal: '1.25' }
const nothing: Wrong = { word: null, label: null, other: null, from: null, to: null, who: null, state: null, ref: null, whole: null, decimal: null }

/** Every string of a text by its path; functions are called with something. */
function said(value: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, value]]
  if (typeof value === 'function') {
    const args = path.includes('refusal.codes') ? [[wrong], [nothing]] : [[2, 2, 2, 2]]
    return args.map((each, i) => [`${path}(${i})`, String(value(...each))] as const)
  }
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => said(each, `${path}.${key}`))
}

const english = said(texts.en)

describe('every language', () => {
  it.each(langs)('%s says the same things as English, none of them empty', (lang) => {
    const paths = said(texts[lang]).map(([path]) => path)

    expect(paths).toEqual(expect.arrayContaining(english.map(([path]) => path)))
    expect(paths).toHaveLength(english.length)
    for (const [path, words] of said(texts[lang])) {
      expect(words.trim(), path).not.toBe('')
      expect(words, path).not.toMatch(/undefined|null|NaN|\[object/)
    }
  })

  it.each(langs)('%s never says that something is safe', (lang) => {
    for (const [path, words] of said(texts[lang])) {
      expect(words, path).not.toMatch(
        /\b(safe|safely|harmless|segur[oa]s?|inofensiv|sin peligro|sin riesgo)\b|(^|\s)sûre?s?(\s|$)|sans danger|sans risque/iu
      )
    }
  })

  it.each(langs)('%s uses no markup of the chat service', (lang) => {
    for (const [path, words] of said(texts[lang])) expect(words, path).not.toMatch(/[<>&*~`_]|:\/\//)
  })

  it.each(['es', 'fr'] as const)('%s has no English in it', (lang) => {
    const leaks =
      /(?<!\p{L})(the|and|not|with|without|wind|gust|rain|sheet|sheets|humidity|dew|dry|wet|clean|dirty|welder|coupon|course|strip|patch|logged|nothing|unknown|caution|take|reading|readings|state|wait|close|least|most|ready|undone|write|example|limits|roof|weather|invented|day|days|open|passed|failed|substrate|fleece|gap|voids?|hotter|cooler|faster|slower)(?!\p{L})/iu
    for (const [path, words] of said(texts[lang])) {
      if (path.startsWith('.frame.attribution')) continue
      expect(words.replace(/site new|(^\/?|· )(strip|sheets|day)(?![a-z])|DATE|\bat LAT,LON|(ayuda|aide) spray/g, ''), path).not.toMatch(leaks)
    }
  })

  it('defers to local rules in every caution', () => {
    for (const caution of Object.values(texts.en.cautions)) expect(caution).toContain('Local rules and licensed practice')
    for (const caution of Object.values(texts.es.cautions)) expect(caution).toContain('reglas locales')
    for (const caution of Object.values(texts.fr.cautions)) expect(caution).toContain('règles locales')
  })
})

describe('the words of the trade (common practice, no source)', () => {
  it.each([
    ['en', 'end joint', 'cover strip', 'void 3', 'open time 60 s', 'GO', 'NO-GO'],
    ['es', 'junta a tope', 'tira cubrejunta', 'falla 3', 'tiempo abierto 60 s', 'SE PUEDE', 'NO SE PUEDE'],
    ['fr', 'joint d’about', 'bande de recouvrement', 'défaut 3', 'temps ouvert 60 s', 'ON Y VA', 'ON N’Y VA PAS']
  ] as const)('%s', (lang, end, strip, void3, openTime, go, noGo) => {
    const text = texts[lang]

    expect([
      text.probe.on.end,
      text.probe.on.strip,
      text.probe.number(3),
      text.foam.openTime('60 s'),
      text.outcomes.go,
      text.outcomes['no-go']
    ]).toEqual([end, strip, void3, openTime, go, noGo])
  })
})

describe('plural', () => {
  // Source of the forms: CLDR plural rules, as Intl.PluralRules has them (fr: 0 and 1.5 are one; es, fr: a round million is many).
  it.each([
    ['en', 0, 'voids'],
    ['en', 1, 'void'],
    ['en', 2, 'voids'],
    ['en', 1_000_000, 'voids'],
    ['es', 0, 'fallas'],
    ['es', 1, 'falla'],
    ['es', 2, 'fallas'],
    ['es', 1_000_000, 'de fallas'],
    ['fr', 0, 'défaut'],
    ['fr', 1, 'défaut'],
    ['fr', 1.5, 'défaut'],
    ['fr', 2, 'défauts'],
    ['fr', 1_000_000, 'de défauts']
  ] as const)('%s %d: %s', (lang, count, form) => {
    const forms = {
      en: { one: 'void', other: 'voids' },
      es: { one: 'falla', many: 'de fallas', other: 'fallas' },
      fr: { one: 'défaut', many: 'de défauts', other: 'défauts' }
    }[lang]

    expect(plural(lang, count, forms)).toBe(form)
  })

  it('puts the number before the noun as the language groups it', () => {
    expect(counted('fr', 1_000_000, { one: 'lé', many: 'de lés', other: 'lés' })).toBe('1\u202f000\u202f000 de lés')
    expect(counted('es', 1_000_000, { one: 'lámina', many: 'de láminas', other: 'láminas' })).toBe('1.000.000 de láminas')
    expect(counted('en', 2150, { one: 'sheet', other: 'sheets' })).toBe('2150 sheets')
  })

  it.each(langs)('%s counts what is to state, to read, strips and days', (lang) => {
    const { decision, strip } = texts[lang]

    for (const count of [1, 2, 1_000_000]) {
      for (const words of [decision.toState(count), decision.toRead(count), decision.days(count), strip.pieces(count)])
        expect(words).toMatch(/^[\d.,\u202f]+ \S/u)
    }
  })
})

describe('words of the trade', () => {
  /** Other words for what has a word already, from our own list: common practice, no source. Typed words (usages) may be more. */
  const others = {
    es: [/\bsondear/i, /\bcoches?\b/i, /\bfallas? pasadas?\b/i, /prueba de rociado/i],
    fr: [/\brelevés?(?! \[)/i, /garde incendie/i, /feuilles? libres?/i, /pellicule/i, /\bgens\b/i, /fenêtre/i, /câble plus court/i]
  } as const

  it.each(['es', 'fr'] as const)('%s calls one thing by one word', (lang) => {
    const spoken = said(texts[lang]).filter(([path]) => !/^\.(usages|guide|takeoff|install|cautions)/.test(path) && !/pieds?/.test(path))
    const found = spoken.filter(([, words]) => others[lang].some((other) => other.test(words)) && !/pieds? de relevés/.test(words))
    expect(found).toEqual([])
  })

  it('are counted by the rules of the language, never by hand', () => {
    const folder = join(import.meta.dirname, '../../../src/bot')
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.startsWith('text') && name.endsWith('.ts'))
    expect(files.length).toBeGreaterThan(50)
    expect(files.filter((name) => /[!=]== 1 \?|> 1 \?/.test(readFileSync(join(folder, name), 'utf8')))).toEqual([])
  })
})

describe('usages', () => {
  it('give every command a usage and an example that begin with it', () => {
    for (const name of commandNames) {
      expect(usages[name].usage.startsWith(name)).toBe(true)
      expect(usages[name].example).toMatch(new RegExp(`^/(seamhand )?${name}\\b`))
    }
  })

  it('fit on the small screen: 400 characters at most', () => {
    for (const name of commandNames) expect(usages[name].usage.length).toBeLessThanOrEqual(400)
  })
})
