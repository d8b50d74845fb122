import { describe, expect, it } from 'vitest'
import { fireWatch } from '../../../src/core/closing/fire-watch.js'
import { emptyClosing } from '../../../src/core/log/states/closing.js'
import { type DayState, emptyDay } from '../../../src/core/log/states/day.js'
import type { WelderState } from '../../../src/core/log/states/welder.js'
import { iso } from '../../support/instant.js'

const at = (time: string) => iso(`2026-05-04T${time}:00Z`)
const day = (part: Partial<DayState>): DayState => ({ ...emptyDay, ...part })
const fire = (part: object) => ({ ...emptyClosing, fire: { ...emptyClosing.fire, ...part } })
const coupon = (time: string) => [{ coupon: { at: at(time), seq: 1, value: {} } }] as unknown as readonly WelderState[]

/** One hour after hot work: NFPA 51B as read second-hand (outside contract: design page §8). The permit decides. */
describe('the fire watch', () => {
  it.each([
    ['without heat', day({}), [], '16:00', { state: 'none', until: null, leftMin: 0, watchMin: 60 }],
    ['laid without a weld', day({ laidAt: at('15:00') }), [], '15:10', { state: 'none' }],
    ['from the last metres welded', day({ laidAt: at('15:00'), robotM: 12 }), [], '15:10', { state: 'running', until: at('16:00'), leftMin: 50 }],
    ['from metres of a third welder', day({ laidAt: at('15:00'), othersM: 4 }), [], '15:10', { state: 'running', until: at('16:00'), leftMin: 50 }],
    ['from a later coupon', day({ laidAt: at('15:00'), handM: 1 }), coupon('15:20'), '15:30', { until: at('16:20'), leftMin: 50 }],
    ['not from a coupon after now', day({ laidAt: at('15:00'), handM: 1 }), coupon('17:00'), '15:30', { until: at('16:00') }],
    ['from stated heat', day({ closing: fire({ heatAt: at('15:30') }) }), [], '15:31', { until: at('16:30') }],
    ['as long as the permit says', day({ closing: fire({ heatAt: at('15:00'), watchMin: 120 }) }), [], '16:30', { state: 'running', leftMin: 30 }],
    ['a second before its end', day({ closing: fire({ heatAt: at('15:00') }) }), [], '15:59', { state: 'running', leftMin: 1 }],
    ['at its end', day({ closing: fire({ heatAt: at('15:00') }) }), [], '16:00', { state: 'unsigned', leftMin: 0 }],
    ['signed off', day({ closing: fire({ heatAt: at('15:00'), doneAt: at('16:00'), by: 'Ana' }) }), [], '16:05', { state: 'done', by: 'Ana' }],
    ['signed, then heat again', day({ closing: fire({ heatAt: at('16:10'), doneAt: at('16:00') }) }), [], '16:20', { state: 'running', leftMin: 50 }]
  ] as const)('%s', (_name, today, welders, now, watch) => {
    expect(fireWatch([null, today], welders, at(now))).toMatchObject(watch)
  })

  it('goes on over midnight', () => {
    const yesterday = day({ laidAt: iso('2026-05-04T23:40:00Z'), robotM: 3 })
    expect(fireWatch([yesterday, null], [], iso('2026-05-05T00:10:00Z'))).toMatchObject({ state: 'running', leftMin: 30 })
  })
})
