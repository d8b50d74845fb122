import type { LapsedBy } from '../../core/facts.js'
import type { CouponCause } from '../../core/log/data.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clearanceWords, welderName } from './decision.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { flag, num, oneOf, row, str } from './read.js'
import { pageOf } from './view.js'

/** `weld NAME …`: one welder, its coupon, its clearance, its trend. */
export function couponView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { coupon } = text
  const cause = oneOf<CouponCause>(numbers, 'cause', coupon.causes)
  const cleared = clearanceWords(flag(numbers, 'cleared'), oneOf<LapsedBy>(numbers, 'lapsedBy', coupon.lapsedBy), text)
  const again = flag(numbers, 'cleared') !== true && !answer.findings.some(({ fix }) => fix !== null)
  const lines = [
    ...widthLine(answer, how, text),
    ...(cause === null ? [] : [coupon.causes[cause]]),
    ...moveLine(numbers, text),
    again ? `${cleared} → ${text.fixes['weld:coupon']}` : cleared,
    ...holdLine(numbers, how, text)
  ]
  return pageOf(answer, { about: aboutOf(answer, text), lines, details: trendLines(numbers, how, text) }, how, text)
}

function aboutOf({ numbers, outcome }: Answer, text: Text): string {
  const { coupon } = text
  const name = welderName(str(numbers, 'welder'), text)
  const passed = flag(numbers, 'passed')
  if (passed === null) return coupon.notJudged(name)
  if (!passed) return coupon.failed(name)
  return outcome === 'go' || str(numbers, 'lapsedBy') === null ? coupon.passed(name) : coupon.lapsed(name)
}

/** Left out where a finding says it with its limit. */
function widthLine({ numbers, findings }: Answer, how: How, text: Text): readonly string[] {
  const widthMm = num(numbers, 'widthMm')
  const shown = findings.some(({ rule, value }) => rule === 'coupon-width' && typeof value === 'number')
  if (widthMm === null || shown) return []
  const minMm = num(numbers, 'minWidthMm')
  return [text.coupon.width(amount(widthMm, 'mm', how), minMm === null ? null : amount(minMm, 'mm', how))]
}

/** Directions only: the numbers are the maker's. */
function moveLine(numbers: Answer['numbers'], { coupon, frame }: Text): readonly string[] {
  const move = row(numbers, 'move')
  if (move === null) return []
  const moves = (['speed', 'temperature', 'pressure'] as const).flatMap((what) => {
    const way = str(move, what)
    return way === 'up' || way === 'down' ? [coupon.moves[what][way]] : []
  })
  if (moves.length === 0) return []
  const said = coupon.next(moves.join(` ${frame.or} `))
  return [moves.length === 1 ? said : `${said}, ${coupon.oneAtATime}`]
}

function holdLine(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const onHoldM = num(numbers, 'onHoldM')
  return onHoldM === null || !(onHoldM > 0) ? [] : [text.coupon.onHold(amount(onHoldM, 'm', how))]
}

function trendLines(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const [mean, sigma, chance] = [num(numbers, 'meanMm'), num(numbers, 'sigmaMm'), num(numbers, 'chanceShort')]
  const trend = mean === null || sigma === null ? [] : [text.coupon.trend(amount(mean, 'mm', how), amount(sigma, 'mm', how))]
  return chance === null ? trend : [...trend, text.coupon.short(amount(chance * 100, '%', how))]
}
