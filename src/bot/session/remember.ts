import type { Memory } from '../../core/gather/memory.js'
import { localDate } from '../../core/instant.js'
import { emptyDay } from '../../core/log/states/day.js'
import { emptyKit } from '../../core/log/states/kit.js'
import { emptySite } from '../../core/log/states/site.js'
import { emptyWelder, type WelderState } from '../../core/log/states/welder.js'
import type { Session } from './session.js'

/** The kit of a site that named none yet. */
export const firstKit = 'K1'

/** What the log says of the site now, for the rules. */
export async function remember(session: Session): Promise<Memory> {
  const { settings, now } = session
  const site = (await session.state('site')) ?? emptySite
  const today = (await session.state(`day:${localDate(now, settings.zone)}`)) ?? emptyDay
  const yesterday = (await session.state(`day:${localDate(now - 86_400, settings.zone)}`)) ?? emptyDay
  const kitName = site.kit ?? firstKit
  const kit = (await session.state(`kit:${kitName}`)) ?? emptyKit(kitName)
  const welders: WelderState[] = []
  for (const [name, { off }] of Object.entries(today.welders).sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (!off) welders.push((await session.state(`welder:${name}`)) ?? emptyWelder(name))
  }
  return { settings, site, today, yesterday, kit, welders }
}
