import { z } from 'zod'
import { fromIso, toIso } from '../../../core/instant.js'
import { HttpError, sendJson } from '../http.js'
import { personOf } from './read.js'
import type { Route } from './write.js'

const years = { from: '2000-01-01T00:00:00Z', to: '2100-01-01T00:00:00Z' }

/** Only what the page sends; an instant with its offset, within a century that calendars of zones know. */
const query = z.object({
  site: z.string().min(1).max(100),
  at: z.iso
    .datetime({ offset: true })
    .max(40)
    .transform((text) => fromIso(text) ?? Number.NaN)
    .refine((at) => at >= (fromIso(years.from) ?? 0) && at < (fromIso(years.to) ?? 0)),
  lang: z.enum(['en', 'es', 'fr']).nullable().catch(null),
  units: z.enum(['metric', 'us']).nullable().catch(null)
})

/** Each takes a moment of the whole engine: more than these at once wait for nobody. */
const mostAtOnce = 3
const running = new WeakMap<object, number>()

/** What would be said at an instant: reckoned, and no part of the record. */
export const getWhatIf: Route = async (world, _req, res, url) => {
  const { whatIf } = world.settings
  if (whatIf === null) throw new HttpError(404, 'not-found')
  const person = personOf(url.searchParams.get('user'))
  const asked = query.safeParse({ lang: null, units: null, ...Object.fromEntries(url.searchParams) })
  if (!asked.success) throw new HttpError(400, 'bad-question')
  const busy = running.get(world) ?? 0
  if (busy >= mostAtOnce) throw new HttpError(429, 'busy')
  running.set(world, busy + 1)
  try {
    const told = await whatIf({ ...asked.data, user: person.id })
    if (told === null) throw new HttpError(404, 'no-site')
    const { at, from, to, nextMorning } = told
    sendJson(res, 200, { ...told, at: toIso(at), from: toIso(from), to: toIso(to), nextMorning: nextMorning === null ? null : toIso(nextMorning) })
  } finally {
    running.set(world, (running.get(world) ?? 1) - 1)
  }
}
