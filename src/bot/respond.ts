import type { LimitsSheet } from '../core/limits/sheet.js'
import type { ErrorCode, Refusal } from './answer.js'
import type { Ask } from './ask.js'
import type { Ports } from './context.js'
import { handle } from './handle.js'
import type { Replied } from './papers/drawn.js'
import { StoreError } from './ports.js'
import { type Reply, replyRefused } from './reply.js'
import { usageOf } from './text/usage-of.js'
import { usages } from './text/usages.js'
import { refusalMessage, speakRefusal } from './views/refusal.js'

/** As `handle`, and never throws: a store that is away is said so, a bug is logged and its reference id said. */
export async function respond(ask: Ask, ports: Ports): Promise<Replied> {
  try {
    return await handle(ask, ports)
  } catch (error) {
    const sheet = ports.sheets.byId('common-practice')
    if (error instanceof StoreError) return { reply: failed(ask, ports, sheet, 'store', error.message, null), files: [] }
    return { reply: failed(ask, ports, sheet, 'internal', null, ports.report(error, { site: ask.site ?? '', via: ask.via })), files: [] }
  }
}

/** The reply where the outside or the program failed: nothing was logged, and what went wrong. */
export function failed(
  ask: Ask,
  defaults: Pick<Ports, 'lang' | 'units'>,
  sheet: LimitsSheet | null,
  code: ErrorCode,
  reason: string | null,
  ref: string | null
): Reply {
  const how = { lang: ask.lang ?? defaults.lang, units: ask.units ?? defaults.units, zone: 'UTC' }
  const refusal: Refusal = { code, word: null, understood: [], detail: reason === null ? {} : { reason }, ref }
  const usage = usageOf(null, usages)
  const limits = sheet === null ? null : { id: sheet.id, version: sheet.version, sha256: sheet.sha256 }
  return replyRefused(refusal, refusalMessage(refusal, how), usage, speakRefusal(refusal, null, usage, how), {
    command: null,
    site: ask.site,
    at: ask.at,
    lang: how.lang,
    units: how.units,
    limits
  })
}
