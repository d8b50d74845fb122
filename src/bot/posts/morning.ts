import { sunEvents } from '../../core/gather/daylight.js'
import { roofOf } from '../../core/gather/roof-of.js'
import { toIso } from '../../core/instant.js'
import { dayPlan } from '../../core/plan/day-plan.js'
import { type Outlook, outlook } from '../../core/plan/outlook.js'
import { ageOf } from '../../core/weather/lookup.js'
import type { Answer } from '../answer.js'
import { dayNumbers } from '../decision/day-numbers.js'
import { warmMinOf } from '../decision/warm-min.js'
import { dayPaper } from '../papers/day-paper.js'
import { texts } from '../text/index.js'
import type { Caution, Text } from '../text/text.js'
import { dateOf } from '../views/clock.js'
import { dryLines, planLines } from '../views/day-plan.js'
import { escapeText } from '../views/escape.js'
import type { How } from '../views/how.js'
import { notesOf } from '../views/notes.js'
import { shapes } from '../views/outcome.js'
import { layOut, type Page } from '../views/page.js'
import { bindingLines, hazardLines, kitLines, weatherLines, workLines } from './morning-lines.js'
import type { Post, PostOn, Written } from './post.js'

/** The first look of the day: go or not, which hours, what binds, kits, people. */
export const morning: Post = {
  time: (settings) => settings.morning,
  speak: (on) => speakMorning(on, { lang: on.settings.lang, units: on.settings.units, zone: on.settings.zone })
}

/** The morning post in a language and system of units. */
export function speakMorning(on: PostOn, how: How): Written {
  const { memory, forecast, sheet, date, now } = on
  const text = texts[how.lang]
  const roof = roofOf(memory, forecast, sheet, now)
  const day = outlook(memory, forecast, sheet, date, now, roof)
  const papers = dayPaper({ ...on, roof }, day, how)
  return { ...layOut(morningPage(on, day, planned(on, day, how, text), how, text), how.lang), papers }
}

function morningPage(on: PostOn, day: Outlook, plan: readonly string[], how: How, text: Text): Page {
  const { outcome, toRead } = day.activities.spray
  // Without the readings it is the weather that goes, not the work: the first line must not say more.
  const of = day.known && toRead.length > 0 ? `${text.activities.spray} (${text.decision.forecast})` : text.activities.spray
  const about = text.posts.about(of, escapeText(on.site, 60), dateOf(day.date, how) ?? day.date)
  return {
    head: `${shapes[outcome]} ${text.outcomes[outcome]}${text.frame.colon}${about}`,
    lines: day.known ? knownLines(on, day, plan, how, text) : [text.posts.noForecast, ...workLines(day, on, how, text)],
    details: day.known ? bindingLines(day, ['lay', 'weld'], how, text) : [],
    notes: notes(on, day, how, text)
  }
}

function knownLines(on: PostOn, day: Outlook, plan: readonly string[], how: How, text: Text): readonly string[] {
  return [
    ...workLines(day, on, how, text),
    ...bindingLines(day, ['spray'], how, text),
    ...plan,
    ...weatherLines(day, how, text),
    ...kitLines(day, on.sheet, how, text),
    ...hazardLines(day, how, text)
  ]
}

/** Last sheet by, what fits, what to stage, dry and dew; the warming of kits only where one is known to be too cold. */
function planned(on: PostOn, day: Outlook, how: How, text: Text): readonly string[] {
  const { memory, forecast, sheet, settings, date, now } = on
  const warmMin = warmMinOf(memory.kit, { settings, sheet, forecast, boxC: null, now })
  const plan = dayPlan(day, { memory, sheet, now, warmMin })
  const numbers = dayNumbers({ day, plan, sun: sunEvents(settings, date) }, sheet)
  return [...planLines(numbers, now, now, how, text), ...dryLines(numbers, now, how, text)]
}

/** The rule of people that each caution is for; wind is the danger at edges. */
const cautionOf: Readonly<Record<string, Caution>> = {
  thunder: 'thunder',
  ice: 'ice',
  heat: 'heat',
  cold: 'cold',
  'wind-mean': 'edges',
  'wind-gust': 'edges'
}
const mostCautions = 3

/** Small print as under every answer; each danger of the day has its caution, a day without one the usual one of spraying. */
function notes(on: PostOn, day: Outlook, how: How, text: Text): readonly string[] {
  const found = new Set(
    day.hazards.flatMap(({ finding }) => (finding.outcome === 'unknown' && finding.value === null ? [] : (cautionOf[finding.rule] ?? [])))
  )
  const cautions: readonly Caution[] = found.size === 0 ? ['isocyanates'] : [...found].slice(0, mostCautions)
  return [...cautions.map((caution) => text.cautions[caution]), ...notesOf(source(on), null, how, text)]
}

/** What the line of weather and limits is made of. */
function source({ forecast, sheet, site, settings, now }: PostOn): Answer {
  const weather =
    forecast === null
      ? null
      : {
          source: forecast.source,
          issuedAt: toIso(forecast.issuedAt),
          stale: ageOf(forecast, now) !== 'fresh',
          sample: forecast.sample
        }
  return {
    command: 'spray',
    site,
    at: now,
    outcome: null,
    outcomes: null,
    activities: { spray: null, lay: null, weld: null, people: null },
    findings: [],
    numbers: {},
    unlogged: false,
    invented: settings.invented,
    changesAt: null,
    limits: { id: sheet.id, version: sheet.version, sha256: sheet.sha256 },
    weather,
    logged: [],
    decision: null,
    undoUntil: null
  }
}
