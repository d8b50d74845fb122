import type { Answer } from '../answer.js'
import type { NumberName, Text } from '../text/text.js'
import { alertLines } from './alerts.js'
import { amount, unitOfName } from './amount.js'
import { escapeText } from './escape.js'
import { afterBond } from './first.js'
import { heldLines } from './holding.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, rows, str } from './read.js'
import { runLines, runWarnings } from './run.js'
import { pageOf } from './view.js'
import { welderLine } from './welder.js'

const perLine = 4
const closeUpFromPct = 20

/** `spray`: can foam be sprayed. */
export function sprayView(answer: Answer, how: How, text: Text): Page {
  const lines =
    flag(answer.numbers, 'overridden') === true
      ? [text.decision.overridden(escapeText(str(answer.numbers, 'reason') ?? '', 200))]
      : runWarnings(answer.numbers, text)
  const details = [...numbersLines(answer.numbers, how, text), ...runLines(answer.numbers, how, text)]
  return afterBond(pageOf(answer, { about: text.activities.spray, lines, details }, how, text), answer, text)
}

/** `air`: sheets and people. */
export function airView(answer: Answer, how: How, text: Text): Page {
  const { lay, people } = text.activities
  const each = (['lay', 'people'] as const).flatMap((activity) => {
    const outcome = answer.activities[activity]
    return outcome === null ? [] : [`${shapes[outcome]} ${text.activities[activity]}`]
  })
  const warned = alertLines(answer.numbers, answer.at, answer.at, how, text)
  const lines = [...warned, ...(each.length > 1 ? [each.join(' · ')] : [])]
  return afterBond(pageOf(answer, { about: `${lay}, ${people}`, lines, details: numbersLines(answer.numbers, how, text) }, how, text), answer, text)
}

/** `weld`: all welders. Rain coming never stops it: the answer says close up now. */
export function weldView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const chancePct = num(numbers, 'rainChancePct')
  const closeUp = flag(numbers, 'closeUp') === true || (chancePct !== null && chancePct >= closeUpFromPct)
  const welders = rows(numbers, 'welders')
    .slice(0, 10)
    .map((welder) => welderLine(welder, how, text))
  const lines = [...(closeUp ? [text.decision.closeUp] : []), ...welders, ...heldLines(answer, how, text)]
  const details = [...powerLines(numbers, how, text), ...numbersLines(numbers, how, text)]
  return pageOf(answer, { about: text.activities.weld, lines, details }, how, text)
}

/** Of the lead stated today: what is left at the tool, the generator it wants, a lead that would do. */
function powerLines(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const say = (name: string, unit: string) => {
    const value = num(numbers, name)
    return value === null ? null : amount(value, unit, how)
  }
  const [volts, heat, watts, area] = [say('toolV', 'V'), say('heatPct', '%'), say('generatorW', 'W'), say('sectionMm2', 'mm2')]
  return [
    ...(volts === null || heat === null ? [] : [text.weld.tool(volts, heat)]),
    ...(watts === null ? [] : [text.weld.generator(watts)]),
    ...(area === null ? [] : [text.weld.section(area, say('mostDropPct', '%') ?? '')])
  ]
}

/** The numbers of a decision by name, some on each line; what is not known is left out, and daylight that is over. */
function numbersLines(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const names = Object.keys(text.decision.numbers) as NumberName[]
  const known = names.flatMap((name) => {
    const value = num(numbers, name)
    const over = name === 'daylightMin' && value !== null && value < 0
    return value === null || over ? [] : [`${text.decision.numbers[name]} ${amount(value, unitOfName(name), how)}`]
  })
  const lines: string[] = []
  for (let i = 0; i < known.length; i += perLine) lines.push(known.slice(i, i + perLine).join(' · '))
  return lines
}
