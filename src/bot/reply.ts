import type { KnownBlock } from '@slack/types'
import type { Finding } from '../core/finding.js'
import { toIso } from '../core/instant.js'
import type { Json } from '../core/log/entry.js'
import { type Answer, type Lang, type Outcomes, type Refusal, type Spoken, type Units, unjudged } from './answer.js'
import { iso, numberJson, toJson } from './json.js'

/** The answer that is promised to the outside: what `ask --json` prints and what a claim keeps. */
export interface Reply {
  readonly v: 1
  readonly ok: boolean
  readonly command: string | null
  readonly site: string | null
  readonly at: string
  readonly lang: Lang
  readonly units: Units
  readonly outcome: Answer['outcome']
  readonly outcomes: Outcomes | null
  readonly activities: Answer['activities']
  readonly binding: string | null
  readonly findings: readonly Json[]
  readonly numbers: Json
  readonly changesAt: string | null
  readonly limits: Answer['limits'] | null
  readonly weather: Answer['weather']
  readonly logged: readonly string[]
  readonly decision: string | null
  readonly undoUntil: string | null
  readonly files: readonly Json[]
  readonly text: string
  readonly blocks: readonly KnownBlock[]
  readonly error: {
    readonly code: string
    readonly message: string
    readonly word: string | null
    readonly understood: Json
    readonly usage: string
    readonly ref: string | null
  } | null
}

export function replyTo(answer: Answer, spoken: Spoken, how: { lang: Lang; units: Units }): Reply {
  const first = answer.findings[0]
  return {
    v: 1,
    ok: true,
    command: answer.command,
    site: answer.site,
    at: toIso(answer.at),
    lang: how.lang,
    units: how.units,
    outcome: answer.outcome,
    outcomes: answer.outcomes,
    activities: answer.activities,
    binding: first === undefined || first.outcome === 'go' ? null : first.rule,
    findings: answer.findings.map(findingJson),
    numbers: toJson(answer.numbers),
    changesAt: iso(answer.changesAt),
    limits: answer.limits,
    weather: answer.weather,
    logged: answer.logged,
    decision: answer.decision,
    undoUntil: iso(answer.undoUntil),
    files: [],
    text: spoken.text,
    blocks: spoken.blocks,
    error: null
  }
}

export function replyRefused(
  refusal: Refusal,
  message: string,
  usage: string,
  spoken: Spoken,
  of: Pick<Answer, 'site' | 'at'> & { command: string | null; lang: Lang; units: Units; limits: Answer['limits'] | null }
): Reply {
  const { command, site, at, lang, units, limits } = of
  return {
    v: 1,
    ok: false,
    command,
    site,
    at: toIso(at),
    lang,
    units,
    outcome: null,
    outcomes: null,
    activities: unjudged,
    binding: null,
    findings: [],
    numbers: {},
    changesAt: null,
    limits,
    weather: null,
    logged: [],
    decision: null,
    undoUntil: null,
    files: [],
    text: spoken.text,
    blocks: spoken.blocks,
    error: { code: refusal.code, message, word: refusal.word, understood: toJson(refusal.understood), usage, ref: refusal.ref }
  }
}

/** Member by member: an answer has thirty, and to copy each without one of its members takes four times as long. */
function findingJson(finding: Finding): Json {
  const { rule, activity, group, outcome, value, unit, limit, margin, spread, origin, at, stale, fix, because } = finding
  return {
    rule,
    activity,
    group,
    outcome,
    value: typeof value === 'number' ? numberJson(value) : value,
    unit,
    limit: limit === null ? null : numberJson(limit),
    margin: margin === null ? null : numberJson(margin),
    spread: numberJson(spread),
    origin,
    at: iso(at),
    stale,
    fix,
    ...(because === undefined ? {} : { because: toJson(because) })
  }
}
