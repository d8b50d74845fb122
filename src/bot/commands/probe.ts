import type { Finding } from '../../core/finding.js'
import type { Folded } from '../../core/log/fold.js'
import { emptySite } from '../../core/log/states/site.js'
import type { VoidState } from '../../core/log/states/void.js'
import { voidRate } from '../../core/welds/rate.js'
import { type Done, type OnSite, refuse, type Told, told } from '../context.js'
import { iso } from '../json.js'
import type { Said } from '../words/said.js'

/** A failed probe spot: opens a void under the next number. */
export async function probeOpen({ found }: Extract<Said, { command: 'probe open' }>, on: OnSite, at: number): Promise<Done> {
  const site = (await on.session.state('site')) ?? emptySite
  const number = site.voids.highest + 1
  await on.session.log('void', `void:${number}`, found, at)
  return told(await status(on, number))
}

/** The only steps there are: open → repaired → passed, or back to open. */
const steps = {
  fixed: { from: 'open', type: 'repair', data: {} },
  passed: { from: 'repaired', type: 'probe', data: { passed: true } },
  failed: { from: 'repaired', type: 'probe', data: { passed: false } }
} as const

export async function probeStep({ number, step }: Extract<Said, { command: 'probe step' }>, on: OnSite, at: number): Promise<Done> {
  const before = await on.session.state(`void:${number}`)
  if (before === null) return refuse('not-found', String(number), { label: 'void' })
  const { from, type, data } = steps[step]
  if (before.state !== from) return refuse('wrong-state', step, { label: 'void', state: before.state, needs: from })
  await on.session.log(type, `void:${number}`, data, at)
  return told(await status(on, number))
}

export async function probeList(_said: Extract<Said, { command: 'probe list' }>, on: OnSite): Promise<Done> {
  const rows = await on.session.view.states('void:')
  const voids = rows.flatMap(({ state }) => (state as unknown as Folded<VoidState>).is ?? [])
  const list = voids
    .sort((a, b) => a.number - b.number)
    .map(({ number, state, found, openedAt }) => ({
      void: number,
      state,
      course: found.course,
      on: found.on,
      distanceM: found.distanceM,
      lengthMm: found.lengthMm,
      at: iso(openedAt)
    }))
  const answer = await status(on, null)
  return told({ ...answer, numbers: { ...answer.numbers, list } })
}

/** Where a void stands, and whether the area may be closed. */
async function status({ session }: OnSite, number: number | null): Promise<Told> {
  const { voids, weldedM } = (await session.state('site')) ?? emptySite
  const one = number === null ? null : await session.state(`void:${number}`)
  const unsettled = Object.values(voids.unsettled)
  const open = unsettled.filter((state) => state === 'open').length
  const repaired = unsettled.length - open
  const finding = closing(open, repaired, session.now)
  return {
    command: 'probe',
    outcome: finding.outcome,
    findings: [finding],
    numbers: { void: number, state: one?.state ?? null, ...whereOf(one), open, repaired, passed: voids.passed, ...voidRate(voids.total, weldedM) }
  }
}

/** Where a void is and how long; nothing for none. */
function whereOf(one: VoidState | null) {
  if (one === null) return {}
  const { course, on, distanceM, lengthMm, causes } = one.found
  return { course, on, distanceM, lengthMm, causes }
}

/** May the area be closed: not while a void is open, or repaired and not probed again. */
function closing(open: number, repaired: number, at: number): Finding<'open-voids'> {
  const left = open + repaired
  return {
    rule: 'open-voids',
    activity: 'weld',
    group: 'checklist',
    outcome: left === 0 ? 'go' : 'no-go',
    value: left,
    unit: null,
    limit: null,
    margin: null,
    spread: 0,
    origin: 'log',
    at,
    stale: false,
    fix: left === 0 ? null : open > 0 ? 'repair:void' : 'probe:void',
    ease: null
  }
}
