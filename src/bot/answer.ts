import type { KnownBlock } from '@slack/types'
import type { Activity, Finding } from '../core/finding.js'
import type { Instant } from '../core/instant.js'
import type { Json } from '../core/log/entry.js'
import type { Outcome } from '../core/outcome.js'
import type { RuleId } from '../core/rules/index.js'
import type { Asks } from './topics.js'

export const langs = ['en', 'es', 'fr'] as const
export type Lang = (typeof langs)[number]
export type Units = 'metric' | 'us'
/** What a person is to a workspace. */
export type PersonRole = 'crew' | 'supervisor' | 'inspector'
/** Checks of mending and closing up. */
export type ClosingCheck = 'bond-square' | 'night-seal' | 'drains-open' | 'sheets-safe' | 'fire-watch' | 'details' | 'punch-list'
/** Findings of the rules, and of the checks that only a command makes. */
export type FindingId = RuleId | 'strip-land' | 'strip-gap' | 'coupon-width' | 'open-voids' | 'test-spray' | ClosingCheck

export const errorCodes = [
  'empty',
  'too-long',
  'unknown-command',
  'unknown-word',
  'missing',
  'bad-number',
  'ambiguous-number',
  'wrong-unit',
  'out-of-range',
  'inconsistent',
  'duplicate',
  'not-found',
  'wrong-state',
  'not-allowed',
  'no-site',
  'bad-option',
  'config',
  'store',
  'weather-file',
  'internal'
] as const
export type ErrorCode = (typeof errorCodes)[number]

export interface Understood {
  readonly label: string
  readonly value: number | string | boolean
  readonly unit: string | null
}

/** Why a message was refused: data; every language has words for each code. */
export interface Refusal {
  readonly code: ErrorCode
  /** The word that was wrong, as typed; null when no single one was. */
  readonly word: string | null
  readonly understood: readonly Understood[]
  /** What the words need: the label meant, bounds, the nearest commands, who may. */
  readonly detail: Readonly<Record<string, string | number | readonly string[]>>
  readonly ref: string | null
}

export interface Outcomes {
  readonly conditions: Outcome
  readonly checklist: Outcome
  readonly people: Outcome
}

/** What a command answers, before it is put into words: everything but text and blocks. */
export interface Answer {
  readonly command: string
  readonly site: string | null
  readonly at: Instant
  readonly outcome: Outcome | null
  readonly outcomes: Outcomes | null
  readonly activities: Readonly<Record<Activity, Outcome | null>>
  readonly findings: readonly Finding<FindingId>[]
  /** Names that are promised to the outside, JSON units; instants as ISO text; numbers rounded to 6 decimals. */
  readonly numbers: Readonly<Record<string, Json>>
  readonly changesAt: Instant | null
  readonly limits: { readonly id: string; readonly version: number; readonly sha256: string }
  readonly weather: { readonly source: string; readonly issuedAt: string; readonly stale: boolean; readonly sample: boolean } | null
  /** Name of the setting for want of which there is no weather; null: none is missing. */
  readonly weatherLacks: string | null
  /** Ids of the entries that this message made, the decision not among them. */
  readonly logged: readonly string[]
  readonly decision: string | null
  readonly undoUntil: Instant | null
  /** Something was said that would have been logged, and was not: an inspector's words, a question that asked for it. */
  readonly unlogged: boolean
  /** The site is invented, and says so wherever it is shown. */
  readonly invented: boolean
  /** What a plain question asked of by name; absent where the words of a command were used. */
  readonly asks?: Asks
}

/** An answer in words. */
export interface Spoken {
  readonly text: string
  readonly blocks: readonly KnownBlock[]
}

/** The activities of an answer that judges none. */
export const unjudged: Answer['activities'] = { spray: null, lay: null, weld: null, people: null }
