import { commonOpenTime, openTimeS } from '../kits/open-time.js'
import { reachM, reachWays } from '../kits/reach.js'
import { formula, refuse } from './formula.js'

const seconds = { kind: 'number', unit: 's', min: 0, max: 3600 } as const
const optionalSeconds = { ...seconds, default: null } as const
const speed = { kind: 'number', unit: 'm/s', min: 0, max: 10, above: true } as const

export const openTime = formula({
  name: 'open-time',
  inputs: { substrateC: { kind: 'number', unit: 'C', min: -20, max: 80 } },
  source:
    'Arrhenius through 90 s at 10 °C and 30 s at 35 °C: times common practice, temperatures invented; a site uses the points of its limits sheet',
  run: ({ substrateC }) => ({ openTimeS: openTimeS(substrateC, commonOpenTime) })
})

/** What each way needs besides open time and spraying speed. */
const needs = { stop: ['handOverS', 'rollS', 'unrollMs'], follow: ['lagS', 'rollS', 'unrollMs'], flop: ['handOverS'] } as const

export const reach = formula({
  name: 'reach',
  inputs: {
    openTimeS: seconds,
    handOverS: optionalSeconds,
    rollS: optionalSeconds,
    sprayMs: speed,
    unrollMs: { ...speed, default: null },
    lagS: optionalSeconds,
    how: { kind: 'word', words: reachWays }
  },
  source: 'kinematics, no source: stop (t − h − r)·min(vs, vu); follow (t − d − r)/(1/vu − 1/vs), null (no limit) when vu ≥ vs; flop (t − h)·vs',
  run(input) {
    const absent = needs[input.how].find((key) => input[key] === null)
    if (absent !== undefined) return refuse('missing', absent, `${input.how} needs ${needs[input.how].join(' ')}`)
    const { handOverS, rollS, unrollMs, lagS } = input
    return { reachM: reachM({ ...input, handOverS: handOverS ?? 0, rollS: rollS ?? 0, unrollMs: unrollMs ?? 0, lagS: lagS ?? 0 }) }
  }
})
