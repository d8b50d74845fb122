import type { Refusal } from '../answer.js'
import type { Ask } from '../ask.js'
import { type Asked, putInPlace, refused, wrongState } from '../asked.js'
import type { Ports } from '../context.js'
import type { FormId } from '../forms/form-id.js'
import { texts } from '../text/index.js'
import { withWhoCan } from '../who-can.js'
import { askFor } from './asks.js'
import { formView } from './form-view.js'
import { knownFor } from './known.js'
import { messageOf, plainMessage } from './message.js'
import type { Delivery, Pressed } from './talk.js'

/** Forms that only supervisors may send. */
const ofSupervisors: ReadonlySet<FormId> = new Set(['site', 'start'])

/** A form, filled; or at once why it would be of no use: nothing is typed in vain. `site` null: that of nowhere in particular. */
export async function openForm(id: FormId, site: string | null, files: readonly string[], delivery: Delivery, ports: Ports): Promise<Pressed> {
  const ask = await askFor({ ...delivery, claim: null }, '', site, ports)
  const asked = await putInPlace(ask, ports)
  const { lang, units } = asked.how
  const place = id === 'start' ? null : asked.place
  if (id !== 'start' && place === null) {
    const { talk } = texts[lang]
    return { kind: 'message', message: plainMessage(site === null ? `${talk.noSites} ${talk.howToBegin}` : talk.gone) }
  }
  const refusal = whyNot(id, ask, asked)
  if (refusal !== null) {
    const reply = refused(asked, await withWhoCan(refusal, ask, ports), null)
    return { kind: 'message', message: messageOf({ reply, files: [] }, false, null) }
  }
  const { workspace, channel } = delivery
  const opened = { site: place?.name ?? '', channel, thread: delivery.thread ?? null, lang, units, files }
  return { kind: 'form', view: formView(id, opened, await knownFor({ workspace, site: place?.name ?? null, channel, lang, units }, ports)) }
}

function whyNot(id: FormId, { role, log }: Ask, { place }: Asked): Refusal | null {
  if (ofSupervisors.has(id) && role !== 'supervisor') return notAllowed(id, 'supervisor')
  if (!log) return notAllowed(id, 'crew')
  return place?.settings.closed && id !== 'site' && id !== 'start' ? wrongState(place.name, 'closed') : null
}

function notAllowed(word: string, who: string): Refusal {
  return { code: 'not-allowed', word, understood: [], detail: { who }, ref: null }
}
