import { localDate } from '../../core/instant.js'
import type { Folded } from '../../core/log/fold.js'
import { emptyDay } from '../../core/log/states/day.js'
import type { KitState } from '../../core/log/states/kit.js'
import { emptySite } from '../../core/log/states/site.js'
import { type Done, type OnSite, told } from '../context.js'
import { firstKit } from '../session/remember.js'
import type { Said } from '../words/said.js'

/** Area and metres laid, and how the kit that was used yields against the sheet's plan. */
export async function laid({ laid: said }: Extract<Said, { command: 'laid' }>, on: OnSite, at: number): Promise<Done> {
  const { session, sheet } = on
  const kit = said.kit ?? ((await session.state('site')) ?? emptySite).kit ?? firstKit
  const day = localDate(at, session.settings.zone)
  await session.log('laid', `day:${day}`, { ...said, kit }, at)
  const today = (await session.state(`day:${day}`)) ?? emptyDay
  const yieldM2PerKit = await meanYield(on)
  const planM2PerKit = sheet.foam.yieldM2PerKit
  return told({
    command: 'laid',
    numbers: {
      areaM2: today.areaM2,
      robotM: today.robotM,
      handM: today.handM,
      kit,
      yieldM2PerKit,
      planM2PerKit,
      driftPct: yieldM2PerKit === null ? null : (yieldM2PerKit / planM2PerKit - 1) * 100
    }
  })
}

/** Mean area of the kits that are empty: of a kit still in use nobody knows what is left. Null before the first is empty. */
async function meanYield({ session }: OnSite): Promise<number | null> {
  const rows = await session.view.states('kit:')
  const areas = rows.flatMap(({ state }) => {
    const kit = (state as unknown as Folded<KitState>).is
    return kit?.empty && kit.usedM2 > 0 ? [kit.usedM2] : []
  })
  return areas.length === 0 ? null : areas.reduce((sum, area) => sum + area, 0) / areas.length
}
