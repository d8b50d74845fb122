import type { Answer, FindingId } from '../answer.js'
import type { Text } from '../text/text.js'
import type { Topic } from '../topics.js'
import { amount } from './amount.js'
import { clock } from './clock.js'
import { noonOf } from './day.js'
import { instantIn } from './day-plan.js'
import { findingLine } from './finding.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, oneOf, row, rows, str } from './read.js'

const rules: Readonly<Record<Topic, readonly FindingId[]>> = {
  thunder: ['thunder'],
  rain: ['rain-now', 'rain-coming'],
  dry: ['substrate-dry', 'fleece-dry', 'seam-dry'],
  wind: ['wind-gust', 'wind-mean'],
  heat: ['heat'],
  cold: ['cold']
}

/**
 * A page that first answers what a plain question asked. Where thunder was spoken of beside work, off the roof comes before that,
 * and the first line says what it hangs on: nobody logged the thunder, so nothing here knows of it.
 */
export function askedFirst(page: Page, answer: Answer, how: How, text: Text): Page {
  const { asks } = answer
  if (asks === undefined) return page
  const said = asks.topics.flatMap((topic) => linesOn(topic, answer, how, text))
  const lines = [...said, ...page.lines.filter((line) => !said.includes(line))]
  if (!asks.worried) return { ...page, lines }
  const knownOf = answer.activities.people === 'no-go'
  const [[heard, write] = ['', ''], [, none] = ['', '']] = text.facts.topics.thunder.say
  const toLog = `${heard}${text.frame.colon}${write} · ${none}`
  return {
    ...page,
    head: knownOf ? page.head : `${page.head} — ${text.asked.byForecast}`,
    lines: [text.cautions.thunder, ...(knownOf ? [] : [toLog]), ...lines],
    notes: page.notes.filter((note) => note !== text.cautions.thunder)
  }
}

function linesOn(topic: Topic, answer: Answer, how: How, text: Text): readonly string[] {
  if (answer.command === 'day') return dayLines[topic](answer, how, text)
  const found = answer.findings.filter(({ rule }) => rules[topic].includes(rule))
  return [...new Set(found.map((finding) => findingLine(finding, how, text)))]
}

type Lines = (answer: Answer, how: How, text: Text) => readonly string[]

const dayLines: Readonly<Record<Topic, Lines>> = {
  thunder: (answer, how, text) =>
    hazard(['thunder'], answer, how, text, [isKnown(answer) ? text.asked.noThunder : `? ${text.findings.thunder.is.unknown}`]),
  rain: rainLines,
  dry: deckLines,
  wind: (answer, how, text) => hazard(rules.wind, answer, how, text, upTo('gustToKmh', text.findings['wind-gust'].name, answer, how, text)),
  heat: (answer, how, text) => hazard(rules.heat, answer, how, text, upTo('airToC', text.decision.numbers.airC, answer, how, text)),
  cold: (answer, how, text) => hazard(rules.cold, answer, how, text, upTo('airToC', text.decision.numbers.airC, answer, how, text))
}

function isKnown({ numbers }: Answer): boolean {
  return flag(numbers, 'known') === true
}

/** The hours in which something threatens people, else what is said instead. */
function hazard(of: readonly FindingId[], { numbers }: Answer, how: How, text: Text, none: readonly string[]): readonly string[] {
  const found = rows(numbers, 'hazards').flatMap((one) => {
    const [rule, outcome, from] = [oneOf(one, 'rule', text.findings), oneOf(one, 'outcome', shapes), instantIn(one, 'from')]
    if (rule === null || outcome === null || from === null || !of.includes(rule)) return []
    const at = outcome === 'unknown' ? '' : `${clock(from, from, how)} `
    return [`${shapes[outcome]} ${at}${text.findings[rule].is[outcome]}`]
  })
  return found.length > 0 ? found : none
}

function upTo(name: string, words: string, { numbers }: Answer, how: How, text: Text): readonly string[] {
  const value = num(numbers, name)
  const unit = name.endsWith('Kmh') ? 'km/h' : 'C'
  return value === null ? [] : [text.posts.upTo(words, amount(Math.round(value), unit, how))]
}

function rainLines(answer: Answer, how: How, text: Text): readonly string[] {
  const { numbers, at } = answer
  const { rain } = text.asked
  const [chancePct, from] = [num(numbers, 'rainToPct'), instantIn(numbers, 'rainFrom')]
  const chance = chancePct === null ? [] : [text.posts.upTo(text.decision.numbers.rainChancePct, amount(Math.round(chancePct), '%', how))]
  if (flag(row(numbers, 'deckNow') ?? {}, 'raining') === true) return [rain.falling]
  if (from !== null) return [[rain.from(clock(from, noonOf(numbers, at, how), how)), ...chance].join(' · ')]
  if (flag(numbers, 'rainKnown') !== true) return [[rain.unknown, ...chance].join(' · ')]
  return [[rain.none, ...chance].join(' · ')]
}

function deckLines(answer: Answer, how: How, text: Text): readonly string[] {
  const { numbers, at } = answer
  const { deck } = text.asked
  const now = row(numbers, 'deckNow') ?? {}
  const dry = instantIn(numbers, 'dryAt')
  const later = dry === null ? [] : [deck.driesAt(clock(dry, noonOf(numbers, at, how), how))]
  const wet = flag(now, 'wet')
  if (wet === true) return [[flag(now, 'today') === true ? deck.wet : deck.wetEarly, ...later].join(', ')]
  if (wet === null || dry !== null) return [[deck.unknown, ...later].join(' · ')]
  if (str(now, 'of') === 'statement') return [deck.dry]
  return [flag(now, 'today') === true ? deck.likelyDry : deck.startsDry]
}
