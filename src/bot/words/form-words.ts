import type { FormId } from '../forms/form-id.js'
import { commandLexicon, voidWords } from './command-words.js'
import { fold } from './fold.js'
import { allForms, type Words } from './forms.js'

const form: Words = { en: 'form', es: 'formulario', fr: 'formulaire' }

/** Names of forms that are no commands: alone they open the form. */
const names: Readonly<Partial<Record<FormId, Words>>> = {
  checklist: { en: 'checklist', es: 'lista_de_control', fr: 'liste_de_contrôle' },
  readings: { en: 'readings reading', es: 'lecturas lectura', fr: 'mesures mesure' },
  coupon: { en: 'coupon', es: 'probeta', fr: 'éprouvette' },
  void: voidWords
}

/** The form of a command that has one for its words. */
export const formOfCommand: Readonly<Record<string, FormId>> = {
  kit: 'kit',
  weld: 'coupon',
  probe: 'void',
  laid: 'laid',
  seal: 'seal',
  detail: 'detail',
  punch: 'punch',
  site: 'site',
  start: 'start'
}

/** Commands that say nothing without a word behind them, or that are a form by nature. */
const alone: ReadonlySet<string> = new Set(['laid', 'probe', 'start'])

const dayStart: Words = { en: 'day_start', es: 'día_inicio day_inicio', fr: 'jour_début day_début' }

/** With the word "form" every command has one. */
const ofCommand: Readonly<Record<string, FormId>> = { ...formOfCommand, spray: 'checklist', air: 'readings', day: 'checklist' }

const formWords = new Set(allForms(form).map(fold))
const byName: ReadonlyMap<string, FormId> = new Map(
  Object.entries(names).flatMap(([id, words]) => allForms(words).map((word) => [fold(word), id as FormId] as const))
)
const starting = new Set(allForms(dayStart).map(fold))

/** The form that a message asks for: its name alone, `kit form`, or a command that needs its words alone. Null for any other message. */
export function formAsked(text: string): { readonly form: FormId; readonly named: boolean } | null {
  const words = fold(text)
    .replace(/^\/?(?:seamhand\s+)?\/?/, '')
    .split(/\s+/)
    .filter((word) => word !== '')
  if (words.length === 0 || words.length > 4) return null
  const rest = words.filter((word) => !formWords.has(word)).join(' ')
  const wanted = rest !== words.join(' ')
  const named = byName.get(rest)
  if (named !== undefined) return { form: named, named: true }
  if (starting.has(rest)) return { form: 'checklist', named: wanted }
  const command = commandLexicon.index.get(rest)?.label ?? ''
  const found = wanted || alone.has(command) ? ofCommand[command] : undefined
  return found === undefined ? null : { form: found, named: wanted }
}
