import type { ModalView } from '@slack/types'
import type { Lang, Units } from '../answer.js'
import type { Opened } from '../forms/form.js'
import type { FormId } from '../forms/form-id.js'
import { forms } from '../forms/index.js'
import { fill } from '../forms/parts/fill.js'
import type { Known } from '../forms/parts/known.js'
import { texts } from '../text/index.js'
import type { FormValues } from './talk.js'

/** What a form carries along until it is sent. */
export interface FormContext extends Opened {
  /** Thread that it was opened in; null: none. */
  readonly thread: string | null
  /** Photos of the message that the form was opened from. */
  readonly files: readonly string[]
}

/** A form as the chat shows it, filled with what is known. */
export function formView(id: FormId, opened: Omit<FormContext, 'was'>, known: Known): ModalView {
  const text = texts[opened.lang]
  const form = forms[id]
  const was = Object.fromEntries(Object.entries(form.fills?.(known) ?? {}).filter(([, value]) => value !== null && value.length > 0))
  const context: FormContext = { ...opened, was }
  const plain = (said: string) => ({ type: 'plain_text', text: said, emoji: false }) as const
  return {
    type: 'modal',
    callback_id: id,
    private_metadata: JSON.stringify(context),
    title: plain(text.talk.forms[id]),
    submit: plain(text.talk.send),
    close: plain(text.talk.cancel),
    blocks: [...comingPhotos(context), ...fill(form.blocks(text, known), was)]
  }
}

/** Says that the photos of the message come along. */
function comingPhotos({ files, lang }: FormContext): ModalView['blocks'] {
  if (files.length === 0) return []
  return [{ type: 'section', text: { type: 'plain_text', text: texts[lang].closing.photo.along(files.length), emoji: false } }]
}

/** Reads back what a form carried; null when it is not ours. */
export function readContext(metadata: string): FormContext | null {
  try {
    const read = JSON.parse(metadata) as Partial<FormContext> | null
    if (typeof read?.site !== 'string' || !isLang(read.lang)) return null
    return {
      site: read.site,
      channel: typeof read.channel === 'string' ? read.channel : null,
      thread: typeof read.thread === 'string' ? read.thread : null,
      lang: read.lang,
      units: unitsOf(read.units),
      files: Array.isArray(read.files) ? read.files.filter((file): file is string => typeof file === 'string' && /^F\w{1,30}$/.test(file)) : [],
      was: isValues(read.was) ? read.was : {}
    }
  } catch {
    return null
  }
}

function isLang(lang: unknown): lang is Lang {
  return lang === 'en' || lang === 'es' || lang === 'fr'
}

function unitsOf(units: unknown): Units {
  return units === 'us' ? 'us' : 'metric'
}

function isValues(was: unknown): was is FormValues {
  const held = (value: unknown) => typeof value === 'string' || (Array.isArray(value) && value.every((one) => typeof one === 'string'))
  return typeof was === 'object' && was !== null && Object.values(was).every(held)
}
