import { decide } from '../../core/decide.js'
import { offRatio } from '../../core/kits/yield.js'
import { areaOf, emptyKit, isOffRatio, type KitState } from '../../core/log/states/kit.js'
import { emptySite } from '../../core/log/states/site.js'
import { worst } from '../../core/outcome.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { factsNow } from '../decision/facts-now.js'
import { boxCOf, timesOfKit } from '../decision/kit-times.js'
import { logKit } from '../decision/log-facts.js'
import { iso } from '../json.js'
import { firstKit } from '../session/remember.js'
import type { Said } from '../words/said.js'

const judged: readonly string[] = ['kit-temperature', 'adhesive-date']

/** Logs what was said of a kit and shows all of them; judged by its temperature and its date, and by its ratio where that is off. */
export async function kit(said: Extract<Said, { command: 'kit' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  if (said.kit !== null) await logKit(on, said.kit, at)
  const current = ((await session.state('site')) ?? emptySite).kit ?? firstKit
  const name = said.about ?? current
  if (said.about !== undefined && (await session.state(`kit:${name}`)) === null) return refuse('not-found', name, { label: 'kit' })
  const { facts } = await factsNow(on)
  // The facts are those of the kit at work; another one is shown, not judged.
  const { isoC, resinC } = name === current ? facts.kit : { isoC: { value: null }, resinC: { value: null } }
  const state = (await session.state(`kit:${name}`)) ?? emptyKit(name)
  const rules = isOffRatio(state) ? [...judged, 'start-up'] : judged
  const findings = name === current ? decide('spray', facts, on.sheet).findings.filter(({ rule }) => rules.includes(rule)) : []
  const { settings, now } = session
  const learned = ((await session.state('site')) ?? emptySite).learned ?? null
  const all = await allKits(on)
  const times = timesOfKit(state, { settings, sheet: on.sheet, forecast: on.forecast, boxC: boxCOf(all), learned, now })
  return told({
    command: 'kit',
    outcome: findings.length === 0 ? null : worst(findings.map(({ outcome }) => outcome)),
    findings,
    numbers: {
      kit: name,
      isoC: isoC.value ?? state.isoC?.value ?? null,
      resinC: resinC.value ?? state.resinC?.value ?? null,
      shellC: times.shellC,
      meanC: times.meanC,
      coreC: times.coreC,
      readyAt: iso(times.readyAt),
      likelyAt: iso(times.likelyAt),
      coldAt: iso(times.coldAt),
      startBy: iso(times.startBy),
      mixing: learned?.mixing ?? on.sheet.kit.mixing,
      learnedFrom: learned?.pairs ?? 0,
      kits: all.map(shownKit)
    }
  })
}

async function allKits({ session }: OnSite): Promise<readonly KitState[]> {
  const rows = await session.view.states('kit:')
  const names = new Set(rows.map(({ subject }) => subject.slice('kit:'.length)))
  const now = ((await session.state('site')) ?? emptySite).kit
  if (now !== null) names.add(now)
  const kits = await Promise.all([...names].sort().map((name) => session.state(`kit:${name}`)))
  return kits.flatMap((state) => state ?? [])
}

function shownKit(kit: KitState) {
  return {
    name: kit.name,
    isoC: kit.isoC?.value ?? null,
    resinC: kit.resinC?.value ?? null,
    at: iso(kit.isoC?.at ?? kit.resinC?.at ?? null),
    mixedAt: iso(kit.mixedAt),
    expiresOn: kit.expiresOn?.value ?? null,
    place: kit.place?.value ?? null,
    lot: kit.lot,
    usedM2: areaOf(kit),
    empty: kit.empty,
    isoLeftPct: kit.left?.value.isoPct ?? null,
    resinLeftPct: kit.left?.value.resinPct ?? null,
    offRatio: kit.left === undefined ? null : offRatio(kit.left.value),
    stopped: isOffRatio(kit)
  }
}
