import type { ModalView } from '@slack/types'
import type { Lang, Units } from '../answer.js'
import type { FormId } from '../forms/form-id.js'
import { forms } from '../forms/index.js'
import { texts } from '../text/index.js'

/** What a form carries along until it is sent. */
export interface FormContext {
  readonly site: string
  readonly channel: string | null
  readonly lang: Lang
  readonly units: Units
  /** Photos of the message that the form was opened from. */
  readonly files: readonly string[]
}

/** A form as the chat shows it. */
export function formView(id: FormId, context: FormContext): ModalView {
  const { talk } = texts[context.lang]
  const plain = (text: string) => ({ type: 'plain_text', text, emoji: false }) as const
  return {
    type: 'modal',
    callback_id: id,
    private_metadata: JSON.stringify(context),
    title: plain(talk.forms[id]),
    submit: plain(talk.send),
    close: plain(talk.cancel),
    blocks: [...comingPhotos(context), ...forms[id].blocks(talk, context.units)]
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
    if (typeof read?.site !== 'string' || (read.lang !== 'en' && read.lang !== 'es' && read.lang !== 'fr')) return null
    return {
      site: read.site,
      channel: typeof read.channel === 'string' ? read.channel : null,
      lang: read.lang,
      units: read.units === 'us' ? 'us' : 'metric',
      files: Array.isArray(read.files) ? read.files.filter((file): file is string => typeof file === 'string' && /^F\w{1,30}$/.test(file)) : []
    }
  } catch {
    return null
  }
}
