import { checkView, withIds } from '../check/index.js'
import { shownView, type View } from '../modals.js'
import { personById } from '../people.js'
import { fileReady } from '../post.js'
import type { Presser } from '../tickets.js'
import type { Loose } from '../types.js'
import type { World } from '../world.js'
import { fail, failRefused, type Method, ok } from './answers.js'

/** The view of a call, checked and with its ids; or the service's error. */
function bodyOf(world: World, args: Loose, type: 'modal' | 'home'): { readonly body: Loose } | { readonly failed: Loose } {
  const refused = checkView(args.view, type, (id) => fileReady(world, id))
  if (refused !== null) return { failed: failRefused(refused) }
  const view = args.view as Loose
  const external = view.external_id
  const taken = typeof external === 'string' && external !== '' ? world.modals.find(null, external) : null
  if (taken !== null && taken.id !== args.view_id && args.external_id !== external) return { failed: fail('duplicate_external_id') }
  return { body: { ...view, blocks: withIds(view.blocks) } }
}

/** The trigger is spent before anything else is looked at, as the service does. */
function spend(world: World, args: Loose): Presser | Loose {
  const presser = world.triggers.spend(args.trigger_id)
  return typeof presser === 'string' ? fail(presser) : presser
}

const open: Method = async (world, args) => {
  const presser = spend(world, args)
  if ('ok' in presser) return presser
  const made = bodyOf(world, args, 'modal')
  return 'failed' in made ? made.failed : ok({ view: shownView(world.modals.open(presser as Presser, made.body)) })
}

const push: Method = async (world, args) => {
  const presser = spend(world, args)
  if ('ok' in presser) return presser
  const made = bodyOf(world, args, 'modal')
  if ('failed' in made) return made.failed
  const view = world.modals.push(presser as Presser, made.body)
  return view === 'push_limit_reached' ? fail(view) : ok({ view: shownView(view) })
}

const update: Method = async (world, args) => {
  const view = world.modals.find(args.view_id ?? null, args.external_id)
  if (view === null) return fail('not_found')
  if (stale(view, args)) return fail('hash_conflict')
  const made = bodyOf(world, args, view.body.type === 'home' ? 'home' : 'modal')
  return 'failed' in made ? made.failed : ok({ view: shownView(world.modals.update(view, made.body)) })
}

const publish: Method = async (world, args) => {
  const person = personById(args.user_id)
  if (person === null) return fail('invalid_arguments')
  const before = world.modals.home(person.id)
  if (before !== null && stale(before, args)) return fail('hash_conflict')
  const made = bodyOf(world, args, 'home')
  return 'failed' in made ? made.failed : ok({ view: shownView(world.modals.publish(person.id, made.body)) })
}

function stale(view: View, args: Loose): boolean {
  return typeof args.hash === 'string' && args.hash !== '' && args.hash !== view.hash
}

export const views: Readonly<Record<string, Method>> = { 'views.open': open, 'views.push': push, 'views.update': update, 'views.publish': publish }
