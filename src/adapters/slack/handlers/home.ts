import type { Delivery } from '../../../bot/talk/talk.js'
import { describe } from '../problem.js'
import type { Context } from './context.js'

const mostHomes = 10_000

/** Publishes a person's home as a whole: on a phone the state of an old one does not survive an update. */
export async function publishHome(context: Context, delivery: Delivery): Promise<void> {
  const { workspaces, homes, log, talk } = context
  if (homes.size < mostHomes) homes.add(keyOf(delivery))
  try {
    const view = await talk.home({ ...delivery, channel: null, claim: null })
    const member = await workspaces.of(delivery.workspace)
    await member?.clients.posts.views.publish({ user_id: delivery.user, view })
  } catch (error) {
    log.warn(describe(error), 'home not published')
  }
}

/** After what may have changed something: for those alone who look at their home. */
export function refreshHome(context: Context, delivery: Delivery): void {
  if (context.homes.has(keyOf(delivery))) void context.work.track(publishHome(context, delivery))
}

function keyOf({ workspace, user }: Delivery): string {
  return `${workspace} ${user}`
}
