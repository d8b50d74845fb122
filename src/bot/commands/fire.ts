import { type FireWatch, fireWatch } from '../../core/closing/fire-watch.js'
import type { Fix } from '../../core/fix.js'
import { localDate } from '../../core/instant.js'
import type { Outcome } from '../../core/outcome.js'
import { check } from '../closing/check.js'
import { dayToClose } from '../closing/day-to-close.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { iso } from '../json.js'
import type { Said } from '../words/said.js'

/** The watch after the last heat: from when, until when, and who kept it to its end. */
export async function fire({ fire: said }: Extract<Said, { command: 'fire' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  const before = await watchAt(on, at)
  if (said.done) {
    if (before.heatAt === null) return refuse('wrong-state', 'done', { label: 'fire', state: 'no-heat' })
    const until = before.heatAt + (said.watchMin ?? before.watchMin) * 60
    if (at < until) return refuse('wrong-state', 'done', { label: 'fire', state: 'running', until: iso(until) ?? '' })
  }
  if (Object.keys(said).length > 0) await session.log('note', `day:${localDate(at, session.settings.zone)}`, { fire: said }, at)
  const { state, heatAt, until, leftMin, watchMin, by } = await watchAt(on, at)
  const outcome = outcomes[state]
  return told({
    command: 'fire',
    outcome,
    findings: [{ ...check('fire-watch', outcome, fixes[state], at), activity: 'weld' }],
    numbers: { state, heatAt: iso(heatAt), untilAt: iso(until), leftMin, watchMin, by }
  })
}

/** That nothing of heat is logged does not say that there was none. */
const outcomes = { none: 'unknown', running: 'no-go', unsigned: 'unknown', done: 'go' } as const satisfies Record<FireWatch['state'], Outcome>

async function watchAt({ session }: OnSite, at: number): Promise<FireWatch> {
  const { yesterday, today, welders } = await dayToClose(session, at)
  return fireWatch([yesterday, today], welders, at)
}

const fixes = { none: 'state:heat', running: 'watch:fire', unsigned: 'state:fire', done: null } as const satisfies Record<
  FireWatch['state'],
  Fix | null
>
