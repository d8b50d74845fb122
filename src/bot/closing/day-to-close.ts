import type { DayToClose } from '../../core/closing/what-is-open.js'
import { type Instant, localDate } from '../../core/instant.js'
import type { Folded } from '../../core/log/fold.js'
import { emptyDay } from '../../core/log/states/day.js'
import { emptySite } from '../../core/log/states/site.js'
import type { WelderState } from '../../core/log/states/welder.js'
import type { Session } from '../session/session.js'

/** What the log says of a site, for the gate at the end of the day of an instant. */
export async function dayToClose(session: Session, now: Instant = session.now): Promise<DayToClose> {
  const { zone, substrate } = session.settings
  const rows = await session.view.states('welder:')
  const welders = rows.flatMap(({ state }) => (state as unknown as Folded<WelderState>).is ?? [])
  return {
    site: (await session.latest('site')) ?? emptySite,
    today: (await session.latest(`day:${localDate(now, zone)}`)) ?? emptyDay,
    yesterday: await session.latest(`day:${localDate(now - 86_400, zone)}`),
    welders,
    substrate,
    now
  }
}
