import type { LapsedBy } from '../../core/facts.js'
import type { CouponCause } from '../../core/log/data.js'
import { chanceFrom } from '../../core/welds/chart.js'
import { goodCutsNeeded } from '../../core/welds/holding.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { driftWords } from './drift.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { flag, num, oneOf, row, str } from './read.js'
import { pageOf } from './view.js'
import { clearanceWords, welderName } from './welder.js'

/** `weld NAME …`: one welder, its coupon, its clearance, its trend. */
export function couponView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { coupon } = text
  const cause = oneOf<CouponCause>(numbers, 'cause', coupon.causes)
  const cleared = clearanceWords(flag(numbers, 'cleared'), oneOf<LapsedBy>(numbers, 'lapsedBy', coupon.lapsedBy), text)
  const again = flag(numbers, 'cleared') !== true && !answer.findings.some(({ fix }) => fix !== null)
  const released = str(numbers, 'event') === 'released'
  const lines = [
    ...(released ? metresLine(numbers, how, text) : []),
    ...widthLine(answer, how, text),
    ...(cause === null ? [] : [coupon.causes[cause]]),
    ...moveLine(numbers, text),
    again ? `${cleared} → ${text.fixes['weld:coupon']}` : cleared,
    ...holdLines(numbers, how, text),
    ...driftWords(numbers, text)
  ]
  const details = [...(released ? [] : metresLine(numbers, how, text)), ...trendLines(numbers, how, text)]
  return pageOf(answer, { about: aboutOf(answer, text), lines, details }, how, text)
}

function aboutOf({ numbers, outcome }: Answer, text: Text): string {
  const { coupon } = text
  const name = welderName(str(numbers, 'welder'), text)
  const passed = flag(numbers, 'passed')
  if (passed === null) return coupon.notJudged(name)
  if (flag(numbers, 'cut') === true) return `${passed ? text.weld.goodCut : text.weld.badCut}, ${name}`
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

/** Metres on hold, and how far the work on them has come. */
function holdLines(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const onHoldM = num(numbers, 'onHoldM')
  if (onHoldM === null || !(onHoldM > 0)) return []
  const { weld } = text
  const goodCuts = num(numbers, 'goodCuts') ?? 0
  const probed = flag(numbers, 'probed') === true
  const begun = goodCuts > 0 || probed || flag(numbers, 'cut') === true
  const work = [weld.cuts(Math.min(goodCuts, goodCutsNeeded), goodCutsNeeded), probed ? weld.probed : weld.notProbed].join(' · ')
  if (goodCuts >= goodCutsNeeded && probed) return [text.weld.onHold(amount(onHoldM, 'm', how)), `${work} → ${weld.release}`]
  return [text.coupon.onHold(amount(onHoldM, 'm', how)), ...(begun ? [work] : [])]
}

function metresLine(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const [cleared, onHold, released] = ['clearedM', 'onHoldM', 'releasedM'].map((name) => num(numbers, name) ?? 0) as [number, number, number]
  const say = (metres: number) => amount(metres, 'm', how)
  return cleared + onHold + released > 0 ? [text.weld.metres(say(cleared), say(onHold), say(released))] : []
}

/** The chance only from enough coupons on, and always from how many. */
function trendLines(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const [mean, sigma, chance] = [num(numbers, 'meanMm'), num(numbers, 'sigmaMm'), num(numbers, 'chanceShort')]
  const count = num(numbers, 'coupons') ?? 0
  if (mean === null || sigma === null) return []
  const trend = `${text.coupon.trend(amount(mean, 'mm', how), amount(sigma, 'mm', how))}, ${text.weld.coupons(count)}`
  // A chance takes the next for one of the same kind, which a drift says it is not.
  if (chance === null || str(numbers, 'drift') !== null) return [trend]
  return [trend, count < chanceFrom ? text.weld.tooFew(count, chanceFrom) : text.coupon.short(amount(chance * 100, '%', how))]
}
