import { whatIsOpen } from '../../core/closing/what-is-open.js'
import type { Finding } from '../../core/finding.js'
import { type Instant, localDate } from '../../core/instant.js'
import type { ProbeData, RepairData } from '../../core/log/closing-data.js'
import { weldedAt } from '../../core/log/states/day.js'
import { emptySite } from '../../core/log/states/site.js'
import type { VoidState } from '../../core/log/states/void.js'
import { offRoof } from '../../core/sheets/on-roof.js'
import { waitUntil } from '../../core/welds/cold-wait.js'
import { mendOf } from '../../core/welds/mend.js'
import { voidRate } from '../../core/welds/rate.js'
import { sameVoid } from '../../core/welds/same-void.js'
import { stepsSaid } from '../../core/welds/steps-said.js'
import { dayToClose } from '../closing/day-to-close.js'
import { openRows } from '../closing/open-rows.js'
import { type Done, type OnSite, refuse, type Told, told } from '../context.js'
import { iso } from '../json.js'
import { photosWanted } from '../photos/wanted.js'
import { stateIn, statesOf } from '../session/states.js'
import type { Said } from '../words/said.js'

/** A failed probe spot: opens a void under the next number. */
export async function probeOpen({ found }: Extract<Said, { command: 'probe open' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  const { highest, unsettled } = ((await session.latest('site')) ?? emptySite).voids
  const number = highest + 1
  const wait = found.cooled ? null : waitUntil(await lastWelded(on, at), at)
  const same = sameVoid(found, await latestOf(on, Object.keys(unsettled)))
  const { widthM, lapMm } = on.sheet.sheet
  const doubts = { ...(same === null ? {} : { sameAs: same }), ...offRoof(found, session.settings.roof, widthM, lapMm) }
  await session.log('void', `void:${number}`, found, at)
  const under = found.on === 'strip' || found.on === 'patch' ? await lapsUnder(on, found.course) : []
  return told(
    await status(on, number, { waitUntil: iso(wait), under, datedAt: datedAt(on, at), ...doubts, ...photosWanted(`void:${number}`, found.files) })
  )
}

/** So many voids, the last ones, are looked at for one that was said before: whoever says it twice does so soon. */
const lookedAt = 50

/** The last of some voids, oldest first. */
async function latestOf({ session }: OnSite, numbers: readonly string[]): Promise<readonly VoidState[]> {
  const last = numbers
    .map(Number)
    .sort((a, b) => a - b)
    .slice(-lookedAt)
  const rows = await session.view.statesAt(last.map((number) => `void:${number}`))
  return rows.flatMap((row) => stateIn<'void'>(row) ?? []).sort((a, b) => a.number - b.number)
}

/** When metres were last welded on the day of an instant. */
async function lastWelded({ session }: OnSite, at: Instant): Promise<Instant | null> {
  const day = await session.state(`day:${localDate(at, session.settings.zone)}`)
  return day === null ? null : weldedAt(day)
}

/** Voids in the lap of a course that are not passed: a strip or patch over them hides them. */
async function lapsUnder({ session }: OnSite, course: number): Promise<readonly number[]> {
  const { voids } = (await session.latest('site')) ?? emptySite
  const under: number[] = []
  for (const number of Object.keys(voids.unsettled).map(Number)) {
    const one = await session.latest(`void:${number}`)
    if (one !== null && one.found.on === 'lap' && one.found.course === course) under.push(number)
  }
  return under
}

/** The only steps there are: open → repaired → passed, or back to open. */
const steps = {
  fixed: { from: 'open', type: 'repair' },
  passed: { from: 'repaired', type: 'probe' },
  failed: { from: 'repaired', type: 'probe' }
} as const

type StepSaid = Extract<Said, { command: 'probe step' }>

/**
 * One step of a void. Of two who take the same step at once the second is told who stands where and since when. A step dated before
 * the one it follows is refused; where it is the clock that ran back, it is dated at the one it follows and both times are kept.
 */
export async function probeStep(said: StepSaid, on: OnSite, at: number): Promise<Done> {
  const { number, step } = said
  const { session } = on
  const before = await session.latest(`void:${number}`)
  if (before === null) return refuse('not-found', String(number), { label: 'void' })
  const { from, type } = steps[step]
  if (before.state !== from)
    return refuse('wrong-state', step, { label: 'void', state: before.state, needs: from, since: iso(before.changedAt) ?? '' })
  const ranBack = at === session.now && at < before.changedAt
  if (at < before.changedAt && !ranBack) return refuse('out-of-range', step, { label: 'time', min: iso(before.changedAt) ?? '' })
  const dated = ranBack ? before.changedAt : at
  const cold = said.cooled || before.repair?.steps.includes('cooled') === true
  const wait = step === 'fixed' || cold ? null : waitUntil(before.changedAt, dated)
  await session.log(type, `void:${number}`, step === 'fixed' ? repairOf(said) : probeOf(said, wait !== null), dated)
  return told(await status(on, number, { waitUntil: iso(wait), datedAt: datedAt(on, dated), ...photosWanted(`void:${number}`, said.files) }))
}

function repairOf({ steps, patched, files }: StepSaid): RepairData {
  return { ...(steps && { steps }), ...(patched && { patched }), ...(files && { files }) }
}

/** `warm` is noted where it passed: a warm weld hides a void, and whoever reads the record must see it. */
function probeOf({ step, cooled, files }: StepSaid, warm: boolean): ProbeData {
  return { passed: step === 'passed', ...(cooled && { cooled }), ...(warm && step === 'passed' && { warm }), ...(files && { files }) }
}

/** A photo of a void that is there already. */
export async function probePhoto({ number, files }: Extract<Said, { command: 'probe photo' }>, on: OnSite): Promise<Done> {
  if ((await on.session.latest(`void:${number}`)) === null) return refuse('not-found', String(number), { label: 'void' })
  return told(await status(on, number, photosWanted(`void:${number}`, files)))
}

export async function probeList(_said: Extract<Said, { command: 'probe list' }>, on: OnSite): Promise<Done> {
  const list = [...(await statesOf(on.session.view, 'void'))]
    .sort((a, b) => a.number - b.number)
    .map((one) => ({ void: one.number, state: one.state, ...whereOf(one), at: iso(one.openedAt) }))
  const answer = await status(on, null)
  return told({ ...answer, numbers: { ...answer.numbers, list } })
}

/** Null where the entry is dated now. */
function datedAt({ session }: OnSite, at: Instant): string | null {
  return at === session.now ? null : iso(at)
}

/** Where a void stands, and whether the area may be closed. */
async function status({ session }: OnSite, number: number | null, more: Told['numbers'] = {}): Promise<Told> {
  const { voids, weldedM } = (await session.latest('site')) ?? emptySite
  const one = number === null ? null : await session.latest(`void:${number}`)
  const unsettled = Object.values(voids.unsettled)
  const open = unsettled.filter((state) => state === 'open').length
  const repaired = unsettled.length - open
  const finding = closing(open, repaired, session.now)
  const counts = { open, repaired, passed: voids.passed, ...voidRate(voids.total, weldedM), weldedM, ...(await besides(session)) }
  return {
    command: 'probe',
    outcome: finding.outcome,
    findings: [finding],
    numbers: { void: number, state: one?.state ?? null, ...whereOf(one), ...mendNumbers(one), ...counts, ...more }
  }
}

/** What says that an area is not to be closed though no void of it stands open. */
async function besides(session: OnSite['session']) {
  const { items } = whatIsOpen(await dayToClose(session))
  const rows = openRows(items.filter(({ what, outcome }) => what === 'on-hold' || (what === 'bond' && outcome === 'no-go')))
  return rows.length === 0 ? {} : { besides: rows }
}

/** Where a void is, how long, why, and how many photos are kept; nothing for none. */
function whereOf(one: VoidState | null) {
  if (one === null) return {}
  const { course, on, distanceM, lengthMm, causes } = one.found
  return { course, on, distanceM, lengthMm, causes, photos: one.pictures?.photos.length ?? 0 }
}

/** How it is to be mended and how far it is probed again, until it has passed. */
function mendNumbers(one: VoidState | null) {
  if (one === null || one.state === 'passed') return {}
  const { how, why, patchMm, probeMm } = mendOf(one.found, one.failures)
  return {
    mend: how,
    mendWhy: why,
    patchMm,
    probeMm,
    patched: one.state === 'repaired' ? (one.repair?.patched ?? false) : null,
    stepsSaid: one.state === 'repaired' ? stepsSaid(one) : null
  }
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
