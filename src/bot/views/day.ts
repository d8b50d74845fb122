import { activities } from '../../core/finding.js'
import { dayMarks, type Instant, localTime } from '../../core/instant.js'
import type { Answer } from '../answer.js'
import type { Caution, Text } from '../text/text.js'
import { alertLines } from './alerts.js'
import { amount } from './amount.js'
import { barrier } from './barrier.js'
import { dateOf } from './clock.js'
import { dryLines, instantIn, type Numbers, planLines } from './day-plan.js'
import { findingWords } from './finding.js'
import { afterBond } from './first.js'
import type { How } from './how.js'
import { notesOf } from './notes.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, oneOf, rows, str, strings } from './read.js'
import { runLines, shortestLine } from './run.js'

const mostWindows = 4
const mostHazards = 3

/** `day`: hours of each kind of work with what opens and closes them, the last sheet, what to stage. */
export function dayView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const known = flag(numbers, 'known') === true
  const page = {
    head: headOf(answer, known, how, text),
    lines: [
      ...alertLines(numbers, noonOf(numbers, answer.at, how), answer.at, how, text),
      ...(known ? [...windowLines(answer, how, text), ...planned(answer, how, text)] : [text.posts.noForecast])
    ],
    details: [
      ...hazardLines(numbers, how, text),
      ...shortestLine(numbers, how, text),
      ...runLines(numbers, how, text),
      ...sunLine(numbers, how, text)
    ],
    notes: notesOf(answer, cautionOf(numbers), how, text)
  }
  return afterBond(page, answer, text)
}

function planned(answer: Answer, how: How, text: Text): readonly string[] {
  const { numbers, at } = answer
  const about = noonOf(numbers, at, how)
  return [
    ...bindingLine(answer, how, text),
    ...dryLines(numbers, about, how, text),
    ...planLines(numbers, about, at, how, text),
    ...crewLine(numbers, text),
    ...beforeWork(numbers, text)
  ]
}

/** An instant of the day that is spoken of: times of another day say which. */
export function noonOf(numbers: Numbers, now: Instant, how: How): Instant {
  const date = str(numbers, 'date') ?? ''
  return /^\d{4}-\d{2}-\d{2}$/.test(date) && dateOf(date, how) !== null ? dayMarks(date, how.zone).noon : now
}

/** "✓ GO: spray (forecast) 06:00–19:30, 4 May 2026": of the best windows the longest, which the plan counts too. */
function headOf({ outcome, numbers }: Answer, known: boolean, how: How, text: Text): string {
  const all = rows(numbers, 'windows').filter((one) => str(one, 'activity') === 'spray' && str(one, 'outcome') === outcome)
  const [best] = [...all].sort((a, b) => longS(b) - longS(a))
  const hours = best === undefined ? null : span(best, how)
  const work = known ? `${text.activities.spray} (${text.decision.forecast})` : text.activities.spray
  const date = dateOf(str(numbers, 'date'), how)
  const about = `${work}${hours === null ? '' : ` ${hours}`}${date === null ? '' : `, ${date}`}`
  return outcome === null ? about : `${shapes[outcome]} ${text.outcomes[outcome]}${text.frame.colon}${about}`
}

function longS(one: Numbers): number {
  return (instantIn(one, 'to') ?? 0) - (instantIn(one, 'from') ?? 0)
}

function span(one: Numbers, how: How): string | null {
  const [from, to] = [instantIn(one, 'from'), instantIn(one, 'to')]
  return from === null || to === null ? null : `${localTime(from, how.zone)}–${localTime(to, how.zone)}`
}

function windowLines({ numbers, activities: outcomeOf }: Answer, how: How, text: Text): readonly string[] {
  const all = rows(numbers, 'windows')
  const least = text.posts.noWindow(amount(num(numbers, 'minWindowMin') ?? 0, 'min', how))
  return activities.flatMap((activity) => {
    const name = `${text.activities[activity]}${text.frame.colon}`
    const own = all.filter((one) => str(one, 'activity') === activity)
    const outcome = outcomeOf[activity]
    if (own.length === 0) return outcome === null ? [] : [`${shapes[outcome]} ${name}${least}`]
    const more = own.length > mostWindows ? [text.frame.more(own.length - mostWindows)] : []
    return [...own.slice(0, mostWindows).map((one) => `${shapeIn(one)} ${name}${windowWords(one, how, text)}`), ...more]
  })
}

function shapeIn(one: Numbers): string {
  const outcome = oneOf(one, 'outcome', shapes)
  return outcome === null ? '' : shapes[outcome]
}

/** "06:00–19:30 go, before: dark, after: rain to come". */
function windowWords(one: Numbers, how: How, text: Text): string {
  const outcome = oneOf(one, 'outcome', shapes)
  const hours = span(one, how) ?? ''
  const [opens, closes] = [oneOf(one, 'opens', text.findings), oneOf(one, 'closes', text.findings)]
  return [
    outcome === null ? hours : text.posts.window(hours, text.outcomesWithin[outcome]),
    ...(opens === null ? [] : [text.day.opens(barrier(opens, text, 'before'))]),
    ...(closes === null ? [] : [text.posts.ends(barrier(closes, text, 'after'))])
  ].join(', ')
}

function bindingLine({ findings }: Answer, how: How, text: Text): readonly string[] {
  return findings.slice(0, 1).map((finding) => {
    const around = finding.at === null ? '' : `, ${text.posts.around(localTime(finding.at, how.zone))}`
    return `${text.activities.spray}${text.frame.colon}${text.posts.binds(findingWords(finding, how, text))}${around}`
  })
}

/** Readings that the forecast does not give. */
function beforeWork(numbers: Numbers, text: Text): readonly string[] {
  const fixes = strings(numbers, 'toRead').flatMap((fix) => (Object.hasOwn(text.fixes, fix) ? [text.fixes[fix as keyof Text['fixes']]] : []))
  return fixes.length === 0 ? [] : [text.posts.beforeWork([...new Set(fixes)].join(', '))]
}

function hazardLines(numbers: Numbers, how: How, text: Text): readonly string[] {
  return rows(numbers, 'hazards')
    .slice(0, mostHazards)
    .flatMap((one) => {
      const [rule, outcome] = [oneOf(one, 'rule', text.findings), oneOf(one, 'outcome', shapes)]
      return rule === null || outcome === null ? [] : [`${shapes[outcome]} ${span(one, how) ?? ''} ${text.findings[rule].is[outcome]}`]
    })
}

function sunLine(numbers: Numbers, how: How, { dayPicture }: Text): readonly string[] {
  const [rise, set] = [instantIn(numbers, 'sunriseAt'), instantIn(numbers, 'sunsetAt')]
  const parts = [
    ...(rise === null ? [] : [dayPicture.sunrise(localTime(rise, how.zone))]),
    ...(set === null ? [] : [dayPicture.sunset(localTime(set, how.zone))])
  ]
  return parts.length === 0 ? [] : [parts.join(' · ')]
}

/** Only with a plan: its rates are nobody's own until they are set. */
function crewLine(numbers: Numbers, { day }: Text): readonly string[] {
  const gangs = num(numbers, 'gangs')
  return num(numbers, 'fitsM2') === null || gangs === null ? [] : [day.crew(gangs)]
}

const cautions: Readonly<Record<string, Caution>> = {
  thunder: 'thunder',
  ice: 'ice',
  heat: 'heat',
  cold: 'cold',
  'wind-mean': 'edges',
  'wind-gust': 'edges'
}

/** One caution only: the worst hazard that is known of, else that of spraying. */
function cautionOf(numbers: Numbers): Caution {
  for (const one of rows(numbers, 'hazards')) {
    const caution = Object.hasOwn(cautions, str(one, 'rule') ?? '') ? cautions[str(one, 'rule') ?? ''] : undefined
    if (caution !== undefined && str(one, 'outcome') !== 'unknown') return caution
  }
  return 'isocyanates'
}
