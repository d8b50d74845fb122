import { type Beside, type Done, told } from '../context.js'
import type { Said } from '../words/said.js'

/** A person's language and units, for every answer to come, and whether there is one message a morning for all sites. Kept beside the log, under the person's id. */
export async function me({ lang, units, summary }: Extract<Said, { command: 'me' }>, { ask, ports }: Beside): Promise<Done> {
  const change = {
    ...(lang === null ? {} : { lang }),
    ...(units === null ? {} : { units }),
    ...(summary === null ? {} : { summary: summary ? ('on' as const) : null })
  }
  if (ask.log && Object.keys(change).length > 0) await ports.store.savePerson(ask.workspace, ask.user, change)
  const person = { ...(await ports.store.person(ask.workspace, ask.user)), ...change }
  return told({ command: 'me', numbers: { lang: person.lang, units: person.units, summary: person.summary === 'on' } })
}
