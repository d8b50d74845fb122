import type { PostOn } from '../../src/bot/posts/post.js'
import { demoSite } from '../../src/core/site.js'
import { emptyHour, type Hour } from '../../src/core/weather/hour.js'
import { sheet } from './facts.js'
import { forecastOf } from './hours.js'
import { iso } from './instant.js'
import { emptyMemory, emptyRecord } from './memory.js'

/** Mild, dry, still air: nothing to say of any rule. */
const mild: Partial<Hour> = { airC: 18, rhPct: 50, windKmh: 5, gustKmh: 9, cloudPct: 60, rainMm: 0, rainChancePct: 0, thunder: false }

/** Hours from two days before 2026-05-04 until two days after, all alike but for those that `of` changes; issued at 03:00Z or as told. */
export function weatherOf(of: (at: number) => Partial<Hour> = () => ({}), issuedAt = '2026-05-04T03:00:00Z'): NonNullable<PostOn['forecast']> {
  const hours: Hour[] = []
  for (let at = iso('2026-05-02T15:00:00Z'); at <= iso('2026-05-06T15:00:00Z'); at += 3600) hours.push({ ...emptyHour(at), ...mild, ...of(at) })
  return forecastOf(issuedAt, hours)
}

/** The demo site on 2026-05-04 (a Monday, Berlin is 2 h ahead of UTC) with mild weather and an empty log. */
export function postOn(at: string, change: Partial<PostOn> = {}): PostOn {
  return {
    site: 'demo',
    settings: demoSite,
    memory: emptyMemory(),
    record: emptyRecord,
    forecast: weatherOf(undefined, at),
    alerts: null,
    weatherLacks: null,
    sheet: sheet(),
    date: '2026-05-04',
    now: iso(at),
    ...change
  }
}
