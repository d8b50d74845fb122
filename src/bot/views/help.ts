import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { commandNames, isCommandName } from '../text/usages.js'
import { usualCaution } from './caution.js'
import { escapeText } from './escape.js'
import { guideView } from './guide.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { row, str } from './read.js'
import { pageOf } from './view.js'

/** `help`: all commands, or one with its words, an example and the usual caution. */
export function helpView(answer: Answer, how: How, text: Text): Page {
  const about = str(answer.numbers, 'about')
  if (about === 'guide') return guideView(answer, how, text)
  if (isCommandName(about)) {
    const { usage, example } = text.usages[about]
    const lines = [text.commands[about], text.help.usage(escapeText(usage, 400)), text.help.example(example)]
    return pageOf(answer, { about, lines, caution: usualCaution[about] }, how, text)
  }
  const known = row(answer.numbers, 'usages')
  const shown = known === null ? commandNames : commandNames.filter((name) => Object.hasOwn(known, name))
  const lines = [...shown.map((name) => `${name}${text.frame.colon}${text.commands[name]}`), text.help.anyOrder, text.help.more]
  return pageOf(answer, { about: text.help.commands, lines, caution: null }, how, text)
}
