import type { Lang, Units } from '../answer.js'
import type { Ports } from '../context.js'
import { settingsOf } from '../session/session.js'
import type { Delivery } from './talk.js'

/** Language and units: chosen for this delivery, else the person's, else the site's. */
export async function preferred(delivery: Delivery, site: string | null, ports: Ports): Promise<{ lang: Lang; units: Units }> {
  const person = await ports.store.person(delivery.workspace, delivery.user)
  const view = site === null ? null : await ports.store.view({ workspace: delivery.workspace, site })
  const settings = view === null ? null : await settingsOf(view)
  return {
    lang: delivery.lang ?? person.lang ?? settings?.lang ?? ports.lang,
    units: delivery.units ?? person.units ?? settings?.units ?? ports.units
  }
}
