import type { Memory } from '../../src/core/gather/memory.js'
import { localDate, toIso } from '../../src/core/instant.js'
import type { Entry } from '../../src/core/log/entry.js'
import { refold } from '../../src/core/log/fold.js'
import { emptyDay } from '../../src/core/log/states/day.js'
import { emptyKit } from '../../src/core/log/states/kit.js'
import { emptySite } from '../../src/core/log/states/site.js'
import { emptyWelder, type WelderState } from '../../src/core/log/states/welder.js'
import { touches } from '../../src/core/log/subjects.js'
import { demoSite, type SiteSettings } from '../../src/core/site.js'

/** One thing logged: when, what. */
export type Logged = readonly [at: number, type: Entry['type'], subject: string, data: Entry['data']]

/** What a site remembers of a log at an instant: every state folded from its own entries. `day` as subject is that of `at`. */
export function remembered(log: readonly Logged[], now: number, settings: Partial<SiteSettings> = {}): Memory {
  const all = { ...demoSite, ...settings }
  const entries = log.map(([at, type, subject, data], index) => {
    const day = localDate(at, all.zone)
    const bare = { seq: index + 1, at: toIso(at), type, subject: subject === 'day' ? `day:${day}` : subject, data }
    return { ...bare, touches: touches(bare, day) }
  })
  function state<T>(subject: string, empty: T): T {
    const own = entries.filter((entry) => entry.touches.includes(subject))
    const folded = refold(subject, own, now)?.is as T | null | undefined
    return folded ?? empty
  }
  const site = state('site', emptySite)
  const today = state(`day:${localDate(now, all.zone)}`, emptyDay)
  const kit = site.kit ?? 'K1'
  const welders = Object.entries(today.welders).flatMap(([name, { off }]): WelderState[] => (off ? [] : [state(`welder:${name}`, emptyWelder(name))]))
  return {
    settings: all,
    site,
    today,
    yesterday: state(`day:${localDate(now - 86_400, all.zone)}`, emptyDay),
    kit: state(`kit:${kit}`, emptyKit(kit)),
    welders
  }
}
