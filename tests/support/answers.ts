import type { Answer, FindingId, Lang, Units } from '../../src/bot/answer.js'
import type { How } from '../../src/bot/views/how.js'
import type { Finding } from '../../src/core/finding.js'

export const langs: readonly Lang[] = ['en', 'es', 'fr']
const systems: readonly Units[] = ['metric', 'us']

/** Every language with every system of units, at one invented place. */
export const hows: readonly How[] = langs.flatMap((lang) => systems.map((units) => ({ lang, units, zone: 'Europe/Berlin' })))

/** 2026-05-04T06:10:00Z, 08:10 in Berlin. */
export const morning = 1777875000

export const metric: How = { lang: 'en', units: 'metric', zone: 'Europe/Berlin' }

export function finding(rule: FindingId, part: Partial<Finding<FindingId>> = {}): Finding<FindingId> {
  return {
    rule,
    activity: 'spray',
    group: 'conditions',
    outcome: 'no-go',
    value: null,
    unit: null,
    limit: null,
    margin: null,
    spread: 0,
    origin: 'reading',
    at: morning,
    stale: false,
    fix: null,
    ease: null,
    ...part
  }
}

export function answer(part: Partial<Answer> & Pick<Answer, 'command'>): Answer {
  return {
    site: 'north',
    at: morning,
    outcome: null,
    outcomes: null,
    activities: { spray: null, lay: null, weld: null, people: null },
    findings: [],
    numbers: {},
    changesAt: null,
    limits: { id: 'common-practice', version: 1, sha256: '0'.repeat(64) },
    weather: null,
    weatherLacks: null,
    logged: [],
    decision: null,
    undoUntil: null,
    unlogged: false,
    invented: false,
    ...part
  }
}
