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
  firstSprayAt: null
}

/**
 * The plan of the day of an outlook by the rates of the limits sheet. Of spells of hours that touch, the one with the best window
 * counts, of equals the longest. Nothing without such hours, or where the sizes of the limits sheet make no sheet. Pure.
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

function planned(day: Outlook, { memory, sheet, now, warmMin }: PlanOn): DayPlan {
  const spell = spellOf(day.activities.spray.windows)
  const backlog = localDate(now, memory.settings.zone) === day.date ? backlogOf(memory.today, sheet) : nothing.backlog
  if (spell === null) return { ...nothing, backlog }
  const { crew, foam } = sheet
  const question: LastSheetQuestion = { ends: endsOf(day, spell, memory, sheet), backlog, crew, sizes: sheet, waitMin: trafficWaitMin }
  const firstSprayAt = Math.max(spell.from, day.sprayFromAt ?? spell.from)
  const fits = whatFits(Math.max(now, firstSprayAt), question)
  const areaM2 = Math.min(1e6, fits?.areaM2 ?? 0)
  const staged = stage({ areaM2, foam, sizes: sheet, warmMin, paceM2H: paceM2H(crew, sheet) })
  return { ...nothing, lastSheet: lastWithin(spell, now, question), fits, stage: staged, backlog, firstSprayAt }
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

/** The hours to plan with: windows that touch are one spell. Null without a window. */
export function spellOf(windows: readonly Window[]): Spell | null {
  const spells: Spell[] = []
  for (const { from, to, outcome } of windows) {
    const last = spells.at(-1)
    const best = rank[outcome]
    if (last !== undefined && last.to === from) spells[spells.length - 1] = { from: last.from, to, best: Math.min(last.best, best) }
    else spells.push({ from, to, best })
  }
  const longS = ({ from, to }: Spell) => to - from
  return [...spells].sort((a, b) => a.best - b.best || longS(b) - longS(a) || a.from - b.from)[0] ?? null
}
