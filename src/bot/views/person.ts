import type { EntryType, JsonObject } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import { dataWords } from '../papers/record/entry-words.js'
import type { Text } from '../text/text.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { flag, oneOf, row, rows, str, strings } from './read.js'
import { pageOf } from './view.js'

const valuesMax = 400
const mostTaken = 5

/** `me`: what the person chose; what they did not choose follows the site. */
export function meView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { site, frame } = text
  const lang = oneOf<'en' | 'es' | 'fr'>(numbers, 'lang', site.langs)
  const units = oneOf<'metric' | 'us'>(numbers, 'units', site.units)
  const lines = [
    `${site.keys.lang}${frame.colon}${lang === null ? text.person.asSite : site.langs[lang]}`,
    `${site.keys.units}${frame.colon}${units === null ? text.person.asSite : site.units[units]}`,
    ...(flag(numbers, 'summary') === true ? [text.person.summary] : [])
  ]
  return pageOf(answer, { about: text.person.me, lines }, how, text)
}

/** `undo`: what was taken back. */
export function undoView(answer: Answer, how: How, text: Text): Page {
  const ids = strings(answer.numbers, 'undone').map((id) => escapeText(id, 60))
  const about = ids.length === 0 ? text.person.nothingUndone : text.person.undone(ids.slice(0, mostTaken).join(' '), ids.length)
  const taken = rows(answer.numbers, 'taken').slice(0, mostTaken)
  const lines = [...taken.map((one) => takenLine(one, how, text)), ...(ids.length > mostTaken ? [text.frame.more(ids.length - mostTaken)] : [])]
  return pageOf(answer, { about, lines }, how, text)
}

/** "probe, void 3: passed: yes": what an undone entry was. */
function takenLine(one: JsonObject, how: How, { record, frame }: Text): string {
  const type = oneOf<EntryType>(one, 'type', record.types)
  const [kind = '', name = ''] = (str(one, 'subject') ?? '').split(':')
  const types: Readonly<Record<string, string>> = record.types
  const about =
    kind === 'site' || kind === 'day' || name === ''
      ? []
      : [`${kind === type ? '' : `${types[kind] ?? escapeText(kind, 40)} `}${escapeText(name, 40)}`]
  const data = escapeText(dataWords(row(one, 'data') ?? {}, how, record), valuesMax)
  const what = [...(type === null ? [] : [record.types[type]]), ...about].join(' ')
  return data === '' ? what : `${what}${frame.colon}${data}`
}

/** `correct`: which entry has other values from now on, and which it had. */
export function correctView(answer: Answer, how: How, text: Text): Page {
  const id = escapeText(str(answer.numbers, 'corrected') ?? '', 60)
  const values = (name: 'was' | 'now') => escapeText(dataWords(row(answer.numbers, name) ?? {}, how, text.record), valuesMax)
  const lines = [text.person.was(values('was')), text.person.now(values('now'))]
  return pageOf(answer, { about: text.person.corrected(id), lines }, how, text)
}
