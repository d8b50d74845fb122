import type { Answer } from '../answer.js'
import { dataWords } from '../papers/record/entry-words.js'
import type { Text } from '../text/text.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { flag, oneOf, row, str, strings } from './read.js'
import { pageOf } from './view.js'

const valuesMax = 400

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
  const about = ids.length === 0 ? text.person.nothingUndone : text.person.undone(ids.slice(0, 5).join(' '), ids.length)
  return pageOf(answer, { about, lines: ids.length > 5 ? [text.frame.more(ids.length - 5)] : [] }, how, text)
}

/** `correct`: which entry has other values from now on, and which it had. */
export function correctView(answer: Answer, how: How, text: Text): Page {
  const id = escapeText(str(answer.numbers, 'corrected') ?? '', 60)
  const values = (name: 'was' | 'now') => escapeText(dataWords(row(answer.numbers, name) ?? {}, how, text.record), valuesMax)
  const lines = [text.person.was(values('was')), text.person.now(values('now'))]
  return pageOf(answer, { about: text.person.corrected(id), lines }, how, text)
}
