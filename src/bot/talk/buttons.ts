import type { ActionsBlock, Button } from '@slack/types'
import type { Json } from '../../core/log/entry.js'
import type { Lang } from '../answer.js'
import type { FormId } from '../forms/form-id.js'
import type { Reply } from '../reply.js'
import type { HomeWords } from '../text/home-words.js'
import { texts } from '../text/index.js'
import type { TalkWords } from '../text/talk-words.js'
import { formOfCommand } from '../words/form-words.js'

type ButtonName = keyof TalkWords['buttons']

/** What a button carries: the site and the words or the form it stands for. The words go through the dispatcher like any others. */
function buttonValue(site: string, what: string): string {
  return `${site}|${what}`
}

/** The site of a button that is about none. */
export const nowhere = '+'

/** Site and words of a button; null when it is none of ours. */
export function readButton(value: string): { site: string; what: string } | null {
  const bar = value.indexOf('|')
  return bar < 1 ? null : { site: value.slice(0, bar), what: value.slice(bar + 1) }
}

/** The buttons under an answer: the next thing to do, and undo. Null for none. */
export function buttonsUnder(reply: Reply): ActionsBlock | null {
  if (!reply.ok) return afterRefusal(reply)
  const { site } = reply
  if (reply.command === 'start' && site === null) return { type: 'actions', elements: [formButton('start', nowhere, reply.lang, true)] }
  if (site === null) return null
  const elements = [...nextSteps(reply, site), ...undoOf(reply, site)]
  return elements.length === 0 ? null : { type: 'actions', elements }
}

const wrongWords: ReadonlySet<string> = new Set(['missing', 'unknown-word', 'bad-number', 'ambiguous-number', 'wrong-unit'])

/** The form of a command whose words were not understood, so that nobody spells them twice. */
function afterRefusal({ command, site, lang, error }: Reply): ActionsBlock | null {
  const form = formOfCommand[command ?? '']
  if (error === null || form === undefined || !wrongWords.has(error.code)) return null
  const place = form === 'start' ? nowhere : site
  return place === null ? null : { type: 'actions', elements: [formButton(form, place, lang, true)] }
}

function nextSteps(reply: Reply, site: string): Button[] {
  const { command, outcomes, lang } = reply
  if (command === 'spray') {
    const unknown = (group: string) => reply.findings.some((finding) => isUnknown(finding, group))
    return [
      ...(outcomes !== null && unknown('checklist') ? [formButton('checklist', site, lang, true)] : []),
      ...(unknown('conditions') ? [formButton('readings', site, lang, false)] : [])
    ]
  }
  if (command === 'day')
    return 'start' in (reply.numbers as object) ? [formButton('checklist', site, lang, true), formButton('readings', site, lang, false)] : []
  if (command === 'kit' || command === 'site') return [formButton(command, site, lang, command === 'kit' && reply.outcome !== 'go')]
  if (command === 'weld') return reply.outcome === 'go' ? [] : [formButton('coupon', site, lang, true)]
  const form = closingForm(reply)
  if (form !== null) return [formButton(form, site, lang, true)]
  if (command === 'fire') return reply.outcome === 'unknown' ? [sayButton('fireDone', 'fire done', site, lang, true)] : []
  return command === 'probe' ? probeSteps(reply.numbers as Readonly<Record<string, Json>>, site, lang) : []
}

/** The form that states what an answer about closing up still wants. */
function closingForm({ command, outcome }: Reply): 'seal' | 'detail' | 'punch' | null {
  if (command === 'punch') return 'punch'
  return outcome !== 'go' && (command === 'seal' || command === 'detail') ? command : null
}

function isUnknown(finding: Json, group: string): boolean {
  const { outcome, group: of } = finding as { outcome?: string; group?: string }
  return outcome === 'unknown' && of === group
}

/** A void goes on from where it stands: open → repaired → passed, or back. */
function probeSteps(numbers: Readonly<Record<string, Json>>, site: string, lang: Lang): Button[] {
  const { void: number, state } = numbers
  if (typeof number !== 'number') return [formButton('void', site, lang, true)]
  const patched = sayButton('patched', `probe ${number} fixed patch`, site, lang, true)
  if (state === 'open') return typeof numbers.patchMm === 'number' ? [patched] : [sayButton('fixed', `probe ${number} fixed`, site, lang, true)]
  if (state !== 'repaired') return []
  return [sayButton('passed', `probe ${number} passed`, site, lang, true), sayButton('failed', `probe ${number} failed`, site, lang, false)]
}

function undoOf({ logged, command, lang }: Reply, site: string): Button[] {
  return logged.length === 0 || command === 'undo' || command === 'site' ? [] : [sayButton('undo', `undo ${logged.join(' ')}`, site, lang, false)]
}

export function sayButton(name: ButtonName, words: string, site: string, lang: Lang, primary: boolean): Button {
  return button(`say:${name}`, texts[lang].talk.buttons[name], buttonValue(site, words), primary)
}

/** A button about one of several things, named by its number. */
export function numberedButton(name: keyof HomeWords['numbered'], number: number, words: string, site: string, lang: Lang): Button {
  return button(`say:${name}`, texts[lang].home.numbered[name](number), buttonValue(site, words), false)
}

export function formButton(form: FormId, site: string, lang: Lang, primary: boolean, files: readonly string[] = []): Button {
  return button(`form:${form}`, texts[lang].talk.buttons[form], buttonValue(site, [form, ...files].join('|')), primary)
}

/** The rest of an answer that was kept under a claim. */
export function detailsButton(claim: string, lang: Lang): Button {
  return button('details', texts[lang].talk.buttons.details, buttonValue(nowhere, claim), false)
}

function button(actionId: string, label: string, value: string, primary: boolean): Button {
  return {
    type: 'button',
    action_id: actionId,
    text: { type: 'plain_text', text: label, emoji: false },
    value,
    ...(primary ? { style: 'primary' } : {})
  }
}
