import { sunEvents } from '../gather/daylight.js'
import type { Memory } from '../gather/memory.js'
import { type Instant, localDate } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { rank } from '../outcome.js'
import { OutOfRange } from '../physics/range.js'
import { trafficWaitMin } from '../rules/traffic-wait.js'
import type { DeckDay } from './deck-day.js'
import { type LastSheet, type LastSheetQuestion, lastSheet } from './last-sheet.js'
import type { Outlook } from './outlook.js'
import { type Staged, stage } from './stage.js'
import { type Fits, paceM2H, whatFits } from './what-fits.js'
import type { Window } from './windows.js'
import { backlogOf, type Metres } from './work.js'

/** What can be done in a day, and what that needs. */
export interface DayPlan {
  readonly lastSheet: LastSheet | null
  readonly fits: Fits | null
  readonly stage: readonly Staged[]
  /** Metres laid today and not said to be welded; of another day nothing. */
  readonly backlog: Metres
  readonly deck: DeckDay
  /** Not before the deck is dry and sheets have relaxed on it, nor before the hours to plan with; null without them. */
  readonly firstSprayAt: Instant | null
  /** Hours to spray that nobody knows to be good, and what would fit with them; null where there are none. Above, none of them is counted. */
  readonly unsure: Unsure | null
}

/** Counted by nobody before a reading says so. */
export interface Unsure {
  readonly hours: readonly { readonly from: Instant; readonly to: Instant }[]
  /** With them and the hours beside them that are known, m²; null where nothing fits. */
  readonly fitsM2: number | null
  readonly kits: number | null
  readonly firstSprayAt: Instant | null
  /** There are no other hours: they are planned with for want of better, and are to be said so. */
  readonly all: boolean
}

/** What is known besides the outlook. */
export interface PlanOn {
  readonly memory: Memory
  readonly sheet: LimitsSheet
  readonly now: Instant
  /** From cold to ready of a kit, min; null: not known. */
  readonly warmMin: number | null
}

const nothing: DayPlan = {
  lastSheet: null,
  fits: null,
  stage: [],
  backlog: { robotM: 0, handM: 0 },
  deck: { dryAt: null, dewFromAt: null },
  firstSprayAt: null,
  unsure: null
}

/**
 * The plan of the day of an outlook by the rates of the limits sheet. Of spells of hours that touch, the one with the best window
 * counts, of equals the longest; of its hours those that are not known only where there are no others. Nothing without such hours, or where the sizes of the limits sheet make no sheet. Pure.
 */
export function dayPlan(day: Outlook, on: PlanOn): DayPlan {
  const { deck } = day
  try {
    return { ...planned(day, on), deck }
  } catch (error) {
    // Each number of a limits sheet is in its range, but a lap as wide as its sheet leaves nothing to plan with.
    if (error instanceof OutOfRange) return { ...nothing, deck }
    throw error
  }
}

function planned(day: Outlook, on: PlanOn): DayPlan {
  const { windows } = day.activities.spray
  const spell = spellOf(windows)
  const ofSpell = windows.filter(({ from, to }) => spell !== null && from >= spell.from && to <= spell.to)
  const known = spellsOf(ofSpell.filter(({ outcome }) => outcome !== 'unknown'))
  const unsure = ofSpell.filter(({ outcome, to }) => outcome === 'unknown' && to > on.now)
  const whole = plannedIn(spell === null ? [] : [spell], day, on)
  if (unsure.length === 0) return whole
  const all = known.length === 0
  return { ...(all ? whole : plannedIn(known, day, on)), unsure: { ...withThem(unsure, whole), all } }
}

function withThem(unsure: readonly Window[], { fits, stage: staged, firstSprayAt }: DayPlan): Omit<Unsure, 'all'> {
  return {
    hours: unsure.map(({ from, to }) => ({ from, to })),
    fitsM2: fits?.areaM2 ?? null,
    kits: staged.find(({ what }) => what === 'kits')?.count ?? null,
    firstSprayAt
  }
}

/** In several spells of one day what fits adds up, and the last sheet is that of the latest that has room for one. */
function plannedIn(spells: readonly Spell[], day: Outlook, { memory, sheet, now, warmMin }: PlanOn): DayPlan {
  const backlog = localDate(now, memory.settings.zone) === day.date ? backlogOf(memory.today, sheet) : nothing.backlog
  const { crew, foam } = sheet
  const each = spells.map((spell) => {
    const question: LastSheetQuestion = { ends: endsOf(day, spell, memory, sheet), backlog, crew, sizes: sheet, waitMin: trafficWaitMin }
    const firstSprayAt = Math.max(spell.from, day.sprayFromAt ?? spell.from)
    return { firstSprayAt, fits: whatFits(Math.max(now, firstSprayAt), question), lastSheet: lastWithin(spell, now, question) }
  })
  const [first] = each
  if (first === undefined) return { ...nothing, backlog }
  const fits = together(each.flatMap((one) => one.fits ?? []))
  const areaM2 = Math.min(1e6, fits?.areaM2 ?? 0)
  const staged = stage({ areaM2, foam, sizes: sheet, warmMin, paceM2H: paceM2H(crew, sheet) })
  const last = each.flatMap((one) => one.lastSheet ?? []).at(-1) ?? null
  return { ...nothing, lastSheet: last, fits, stage: staged, backlog, firstSprayAt: first.firstSprayAt }
}

/** The work that holds up the most of it names it. */
function together(all: readonly Fits[]): Fits | null {
  const [most] = [...all].sort((a, b) => b.areaM2 - a.areaM2)
  return most === undefined ? null : { ...most, areaM2: all.reduce((sum, { areaM2 }) => sum + areaM2, 0) }
}

/** None where hours to come are too short for a whole sheet: it would have to go down before they begin. One that is past is said. */
function lastWithin(spell: Spell, now: Instant, question: LastSheetQuestion): LastSheet | null {
  const last = lastSheet(question)
  return last !== null && (last.at >= spell.from || last.at <= now) ? last : null
}

function endsOf(day: Outlook, spell: Spell, { settings }: Memory, { site }: LimitsSheet): LastSheetQuestion['ends'] {
  const { sunsetAt } = sunEvents(settings, day.date)
  // Rain to come never stops welding: its hours end by rain where drops fall.
  const wet = day.activities.weld.windows.find(({ closes, to }) => closes === 'rain-now' && to > spell.from)
  return { window: spell.to, sunset: sunsetAt === null ? null : sunsetAt - site.closeUpMin * 60, rain: wet?.to ?? null }
}

interface Spell {
  readonly from: Instant
  readonly to: Instant
  /** Rank of its best window. */
  readonly best: number
}

/** Windows that touch are one spell; in order of time. */
function spellsOf(windows: readonly Window[]): readonly Spell[] {
  const spells: Spell[] = []
  for (const { from, to, outcome } of windows) {
    const last = spells.at(-1)
    const best = rank[outcome]
    if (last !== undefined && last.to === from) spells[spells.length - 1] = { from: last.from, to, best: Math.min(last.best, best) }
    else spells.push({ from, to, best })
  }
  return spells
}

/** The hours to plan with: the spell with the best window, of equals the longest. Null without a window. */
export function spellOf(windows: readonly Window[]): Spell | null {
  const longS = ({ from, to }: Spell) => to - from
  return [...spellsOf(windows)].sort((a, b) => a.best - b.best || longS(b) - longS(a) || a.from - b.from)[0] ?? null
}
