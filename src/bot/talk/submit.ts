import type { KnownBlock } from '@slack/types'
import type { Ports } from '../context.js'
import { changed, type Phrase } from '../forms/form.js'
import type { FormId } from '../forms/form-id.js'
import { forms } from '../forms/index.js'
import { respond } from '../respond.js'
import { texts } from '../text/index.js'
import { whoAll } from '../views/who.js'
import { askFor } from './asks.js'
import { type FormContext, readContext } from './form-view.js'
import { knownFor } from './known.js'
import { messageOf } from './message.js'
import { mistakesIn, wordsOf } from './mistakes.js'
import type { Delivery, FormValues, Submitted } from './talk.js'

/** A sent form as words for the dispatcher; null for none of ours. What was wrong is said at its field, and the form stays as it was typed. */
export async function submitForm(id: FormId, delivery: Delivery, metadata: string, values: FormValues, ports: Ports): Promise<Submitted | null> {
  const context = readContext(metadata)
  if (context === null) return null
  const form = forms[id]
  const phrases = [...form.phrases(values, context), ...context.files.map((file): Phrase => ({ block: 'photos', words: `photo ${file}` }))]
  if (saysNothing(id, phrases, values, context)) return { kind: 'errors', errors: await nothingStated(id, context, delivery, ports), words: '' }
  const words = wordsOf(form, phrases)
  const site = context.site === '' ? null : context.site
  const ask = await askFor({ ...delivery, channel: context.channel, lang: context.lang, units: context.units }, words, site, ports)
  const replied = await respond(ask, ports)
  const { reply } = replied
  if (reply.ok || reply.error === null)
    return { kind: 'message', message: messageOf(replied, ask.log, ask.claim), channel: context.channel, thread: context.thread }
  const fields = await fieldsOf(id, context, delivery, ports)
  const next = reply.error.code === 'not-allowed' ? await whoCan(delivery, context, ports) : ''
  const first = { word: reply.error.word, message: `${reply.error.message}${next}` }
  return { kind: 'errors', errors: await mistakesIn({ form, phrases, fields }, first, ask, ports), words }
}

/** Forms all of whose fields may stay empty: sent so, or as they were filled, they would log nothing and look as if they had. */
const mayStayEmpty: ReadonlySet<FormId> = new Set(['checklist', 'readings', 'detail'])

function saysNothing(id: FormId, phrases: readonly Phrase[], values: FormValues, { was }: FormContext): boolean {
  return mayStayEmpty.has(id) && phrases.every(({ block }) => block !== 'photos' && !changed(values, was, block))
}

async function nothingStated(id: FormId, context: FormContext, delivery: Delivery, ports: Ports): Promise<Readonly<Record<string, string>>> {
  const [first = 'form'] = await fieldsOf(id, context, delivery, ports)
  return { [first]: texts[context.lang].talk.nothingStated }
}

/** The error of a form that failed on our side: at its first field, so that what was typed stays. */
export async function failedForm(id: FormId, delivery: Delivery, metadata: string, message: string, ports: Ports): Promise<Submitted | null> {
  const context = readContext(metadata)
  if (context === null) return null
  const [first = 'form'] = await fieldsOf(id, context, delivery, ports).catch(() => [])
  return { kind: 'errors', errors: { [first]: message }, words: '' }
}

async function whoCan({ workspace }: Delivery, { lang }: FormContext, { store }: Ports): Promise<string> {
  const people = (await store.supervisors(workspace)).map(({ id }) => id)
  return people.length === 0 ? '' : ` ${texts[lang].begin.askOne(whoAll(people))}`
}

/** Block ids of the fields that the form was shown with: an error anywhere else would be seen by nobody. */
async function fieldsOf(id: FormId, { site, channel, lang, units }: FormContext, { workspace }: Delivery, ports: Ports): Promise<readonly string[]> {
  const known = await knownFor({ workspace, site: site === '' ? null : site, channel, lang, units }, ports)
  const inputs = forms[id].blocks(texts[lang], known).filter((block: KnownBlock) => block.type === 'input')
  return inputs.flatMap(({ block_id }) => block_id ?? [])
}
