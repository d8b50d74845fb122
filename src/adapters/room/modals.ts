import { randomBytes } from 'node:crypto'
import type { Changes } from './changes.js'
import { roomIds } from './people.js'
import type { Presser } from './tickets.js'
import type { Loose } from './types.js'

export interface View {
  readonly id: string
  readonly hash: string
  readonly owner: Presser
  readonly rootId: string
  readonly previousId: string | null
  readonly body: Loose
}

type Stacked = View | 'push_limit_reached'

export interface Modals {
  /** Open forms of a page, the top one last. */
  readonly stack: (presser: Presser) => readonly View[]
  readonly open: (presser: Presser, body: Loose) => View
  readonly push: (presser: Presser, body: Loose) => Stacked
  readonly find: (id: unknown, externalId: unknown) => View | null
  readonly update: (view: View, body: Loose) => View
  /** Takes off the top form, or all. */
  readonly close: (presser: Presser, all: boolean) => readonly View[]
  readonly home: (user: string) => View | null
  readonly publish: (user: string, body: Loose) => View
}

const deepest = 3

export function createModals(changes: Changes): Modals {
  const stacks = new Map<string, View[]>()
  const homes = new Map<string, View>()
  const key = (presser: Presser) => `${presser.user} ${presser.tab}`
  const stack = (presser: Presser) => stacks.get(key(presser)) ?? []
  const set = (presser: Presser, views: View[]) => {
    stacks.set(key(presser), views)
    changes.bump()
  }
  return {
    stack,
    open: (presser, body) => {
      const view = newView(presser, body, null)
      set(presser, [view])
      return view
    },
    push: (presser, body) => {
      const views = stack(presser)
      if (views.length >= deepest) return 'push_limit_reached'
      const view = newView(presser, body, views.at(-1) ?? null)
      set(presser, [...views, view])
      return view
    },
    find: (id, externalId) =>
      [...stacks.values()]
        .flat()
        .concat([...homes.values()])
        .find((view) => view.id === id || (externalId !== undefined && view.body.external_id === externalId)) ?? null,
    update: (view, body) => {
      const changed = { ...view, body, hash: newHash() }
      if (homes.get(view.owner.user)?.id === view.id) homes.set(view.owner.user, changed)
      set(
        view.owner,
        stack(view.owner).map((one) => (one.id === view.id ? changed : one))
      )
      return changed
    },
    close: (presser, all) => {
      const views = stack(presser)
      set(presser, all ? [] : views.slice(0, -1))
      return all ? views : views.slice(-1)
    },
    home: (user) => homes.get(user) ?? null,
    publish: (user, body) => {
      const before = homes.get(user)
      const view = { ...(before ?? newView({ user, tab: '' }, body, null)), body, hash: newHash() }
      homes.set(user, view)
      changes.bump()
      return view
    }
  }
}

function newHash(): string {
  return `${Math.floor(Date.now() / 1000)}.${randomBytes(4).toString('hex')}`
}

function newView(owner: Presser, body: Loose, previous: View | null): View {
  const id = `V${randomBytes(8).toString('hex').toUpperCase()}`
  return { id, hash: newHash(), owner, rootId: previous?.rootId ?? id, previousId: previous?.id ?? null, body }
}

/** As the service hands a view out. */
export function shownView(view: View, values: Loose = {}): Loose {
  return {
    private_metadata: '',
    callback_id: '',
    external_id: '',
    title: null,
    submit: null,
    close: null,
    clear_on_close: false,
    notify_on_close: false,
    ...view.body,
    id: view.id,
    team_id: roomIds.team,
    app_id: roomIds.app,
    bot_id: roomIds.bot,
    app_installed_team_id: roomIds.team,
    hash: view.hash,
    root_view_id: view.rootId,
    previous_view_id: view.previousId,
    state: { values }
  }
}
