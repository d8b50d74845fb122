import type { Handler } from './server.js'
import { sendJson } from './server.js'

/** What readiness looks at; each answers soon and never throws. */
export interface Health {
  readonly store: () => Promise<boolean>
  readonly chat: () => boolean
  readonly weather: () => boolean
  readonly outbox: () => Promise<boolean>
}

/** `GET /healthz`: the process answers. `GET /readyz`: so do the things it needs. */
export function healthHandler(health: Health): Handler {
  return async (req, res) => {
    if (req.method !== 'GET') return false
    const path = (req.url ?? '').split('?')[0]
    if (path === '/healthz') {
      sendJson(res, 200, { ok: true })
      return true
    }
    if (path !== '/readyz') return false
    const [store, outbox] = await Promise.all([health.store(), health.outbox()])
    const state = { store, chat: health.chat(), weather: health.weather(), outbox }
    const ok = Object.values(state).every(Boolean)
    sendJson(res, ok ? 200 : 503, { ok, ...state })
    return true
  }
}
