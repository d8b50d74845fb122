import { type Instant, localDate, toIso } from '../../core/instant.js'
import { type EmptiedKit, meanYield, yieldsBy } from '../../core/kits/yield.js'
import { canonical } from '../../core/log/canonical.js'
import type { LaidData } from '../../core/log/data.js'
import type { JsonObject } from '../../core/log/entry.js'
import { emptyDay } from '../../core/log/states/day.js'
import { areaOf } from '../../core/log/states/kit.js'
import { emptySite } from '../../core/log/states/site.js'
import type { WelderState } from '../../core/log/states/welder.js'
import { clearance } from '../../core/welds/clearance.js'
import { metresByWelder } from '../../core/welds/metres.js'
import { type Done, type OnSite, told } from '../context.js'
import { aroundNow, everyWelder, welderOf } from '../decision/welder-numbers.js'
import { iso } from '../json.js'
import { firstKit } from '../session/remember.js'
import { statesOf } from '../session/states.js'
import type { Said } from '../words/said.js'

/** Area and metres laid, what of them is on hold, and how the kit that was used yields against the sheet's plan. */
export async function laid({ laid: said }: Extract<Said, { command: 'laid' }>, on: OnSite, at: number): Promise<Done> {
  const { session, sheet } = on
  const kit = said.kit ?? ((await session.state('site')) ?? emptySite).kit ?? firstKit
  const emptiedAt = (await session.state(`kit:${kit}`))?.emptiedAt ?? null
  const day = localDate(at, session.settings.zone)
  const names = [...metresByWelder(said).keys()]
  const before = await Promise.all(names.map((name) => welderOf(session, name)))
  const sameAt = await loggedBefore({ ...said, kit }, on, day, at)
  await session.log('laid', `day:${day}`, { ...said, kit, ...(await lapsedThen(names, on, at)) }, at)
  const today = (await session.state(`day:${day}`)) ?? emptyDay
  const kits = await emptiedKits(on)
  const yieldM2PerKit = meanYield(kits)?.m2PerKit ?? null
  const planM2PerKit = sheet.foam.yieldM2PerKit
  const drift = (real: number) => (real / planM2PerKit - 1) * 100
  const rows = (nameOf: Parameters<typeof yieldsBy>[1]) => yieldsBy(kits, nameOf).map((row) => ({ ...row, driftPct: drift(row.m2PerKit) }))
  return told({
    command: 'laid',
    numbers: {
      areaM2: today.areaM2,
      robotM: today.robotM,
      handM: today.handM,
      kit,
      kitAssumed: said.kit === undefined,
      kitEmptiedAt: iso(emptiedAt),
      yieldM2PerKit,
      planM2PerKit,
      driftPct: yieldM2PerKit === null ? null : drift(yieldM2PerKit),
      yieldByDay: rows(({ emptiedAt }) => localDate(emptiedAt, session.settings.zone)),
      yieldByLot: rows(({ lot }) => lot),
      ...(sameAt === null ? {} : { sameAt: iso(sameAt) }),
      ...(await holdNumbers(on, before))
    }
  })
}

const againS = 600

/** When the very same was laid a few minutes before: two phones, or a message sent twice. Null where it was not. */
async function loggedBefore(data: LaidData, { session }: OnSite, day: string, at: number): Promise<Instant | null> {
  const plain = ({ lapsed: _lapsed, ...rest }: LaidData) => canonical({ ...rest } as unknown as JsonObject)
  const same = (await session.steps(`day:${day}`)).findLast(
    (step) => step.type === 'laid' && Math.abs(at - step.at) <= againS && plain(step.data as unknown as LaidData) === plain(data)
  )
  return same?.at ?? null
}

/** Welders whose clearance of a coupon the day, the lead or the weather had lapsed by then: the fold of a welder sees none of these. */
async function lapsedThen(names: readonly string[], on: OnSite, at: number): Promise<Pick<LaidData, 'lapsed'>> {
  const then = { ...on, session: on.session.asOf(at) }
  const states = (await Promise.all(names.map((name) => welderOf(then.session, name)))).filter(({ status }) => status === 'cleared')
  if (states.length === 0) return {}
  const around = await aroundNow(then)
  const lapsed: Record<string, NonNullable<LaidData['lapsed']>[string]> = {}
  for (const state of states) {
    const { status, lapsedBy, at: couponAt } = clearance(state, around, on.sheet)
    if (status !== 'cleared' && couponAt !== null) lapsed[state.name] = { by: lapsedBy, couponAt: toIso(couponAt) }
  }
  return Object.keys(lapsed).length === 0 ? {} : { lapsed }
}

/** All metres on hold by welder, and how many this message put there. */
async function holdNumbers({ session }: OnSite, before: readonly WelderState[]) {
  const every = await everyWelder(session)
  const held = every.filter(({ onHoldM }) => onHoldM > 0).map(({ name, onHoldM, lapsedBy }) => ({ name, onHoldM, lapsedBy }))
  const was = before.reduce((sum, { onHoldM }) => sum + onHoldM, 0)
  const now = every.filter(({ name }) => before.some((welder) => welder.name === name)).reduce((sum, { onHoldM }) => sum + onHoldM, 0)
  return { onHoldM: held.reduce((sum, { onHoldM }) => sum + onHoldM, 0), newOnHoldM: now - was, held }
}

/** Of a kit still in use nobody knows what is left. */
async function emptiedKits({ session }: OnSite): Promise<readonly EmptiedKit[]> {
  return (await statesOf(session.view, 'kit')).flatMap((kit) => {
    const { emptiedAt, lot } = kit
    return emptiedAt !== undefined && areaOf(kit) > 0 ? [{ usedM2: areaOf(kit), lot, emptiedAt }] : []
  })
}
