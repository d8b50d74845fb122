import type { Answer } from '../answer.js'
import { guideSections } from '../text/guide-words.js'
import type { Text } from '../text/text.js'
import type { CommandName } from '../text/usages.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { pageOf } from './view.js'

/** The example of a command in the guide of a language. */
export function guideExample(command: CommandName, { guide, usages }: Pick<Text, 'guide' | 'usages'>): string {
  return Object.hasOwn(guide.examples, command) ? guide.examples[command as keyof typeof guide.examples] : usages[command].example
}

/** `help guide`: one page for a crew, from the same map of commands, with what hurts people at each kind of work. */
export function guideView(answer: Answer, how: How, text: Text): Page {
  const { guide, frame } = text
  const sections = guideSections.flatMap(({ id, commands, caution }) => [
    `${guide.sections[id]}${frame.colon.trimEnd()}`,
    ...commands.map((command) => `${guideExample(command, text)} · ${text.commands[command]}`),
    ...(caution === null ? [] : [`⚠ ${text.cautions[caution]}`])
  ])
  const lines = [...sections, guide.ask, ...guide.questions.map((question) => frame.quote(question)), text.help.anyOrder, text.help.more]
  return pageOf(answer, { about: guide.title, lines, caution: null }, how, text)
}
