import type { Finding } from '../../core/finding.js'
import type { PunchState } from '../../core/log/states/punch.js'
import { emptyPunch, emptySite } from '../../core/log/states/site.js'
import type { FindingId } from '../answer.js'
import { check } from '../closing/check.js'
import { type Done, type OnSite, refuse, type Told, told } from '../context.js'
import { iso } from '../json.js'
import { photosWanted } from '../photos/wanted.js'
import { statesOf } from '../session/states.js'
import type { Said } from '../words/said.js'

/** Something left to mend before the roof is handed over: the next number, in the words it was told in. */
export async function punchAdd({ text, files }: Extract<Said, { command: 'punch add' }>, on: OnSite, at: number): Promise<Done> {
  const { punch = emptyPunch } = (await on.session.latest('site')) ?? emptySite
  const number = punch.highest + 1
  await on.session.log('note', `punch:${number}`, { text, ...(files.length === 0 ? {} : { files }) }, at)
  return told(await status(on, number, photosWanted(`punch:${number}`, files)))
}

/** Done, open again, or only a photo of it. */
export async function punchStep(said: Extract<Said, { command: 'punch step' }>, on: OnSite, at: number): Promise<Done> {
  const { number, done, files } = said
  const subject = `punch:${number}` as const
  const before = await on.session.latest(subject)
  if (before === null) return refuse('not-found', String(number), { label: 'punch' })
  if (done !== null) {
    const is = done ? 'done' : 'open'
    if (before.state === is) return refuse('wrong-state', is, { label: 'punch', state: is, since: iso(before.changedAt) ?? '' })
    if (at < before.changedAt && at !== on.session.now) return refuse('out-of-range', is, { label: 'time', min: iso(before.changedAt) ?? '' })
    await on.session.log('note', subject, { done, ...(files.length === 0 ? {} : { files }) }, Math.max(at, before.changedAt))
  }
  return told(await status(on, number, photosWanted(subject, files)))
}

export async function punchList(_said: Extract<Said, { command: 'punch list' }>, on: OnSite): Promise<Done> {
  const items = [...(await statesOf(on.session.view, 'punch'))].sort((a, b) => a.number - b.number)
  const answer = await status(on, null)
  return told({ ...answer, numbers: { ...answer.numbers, list: items.map((item) => rowOf(item)) } })
}

async function status({ session }: OnSite, number: number | null, more: Told['numbers'] = {}): Promise<Told> {
  const { punch = emptyPunch } = (await session.latest('site')) ?? emptySite
  const one = number === null ? null : await session.latest(`punch:${number}`)
  const left = punch.open.length
  const finding: Finding<FindingId> = {
    ...check('punch-list', left === 0 ? 'go' : 'caution', left === 0 ? null : 'mend:punch', session.now),
    origin: 'log',
    value: left
  }
  return {
    command: 'punch',
    outcome: finding.outcome,
    findings: [finding],
    numbers: { ...(one === null ? { number } : rowOf(one)), open: left, done: punch.total - left, ...more }
  }
}

function rowOf({ number, text, state, openedAt, pictures }: PunchState) {
  return { number, text, state, at: iso(openedAt), photos: pictures.photos.length }
}
