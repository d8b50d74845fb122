import { secondsSince } from '../adapters/http/metrics.js'
import { channelIdOf } from '../adapters/room/index.js'
import { openSpeakers } from '../adapters/speakers.js'
import { cellOf } from '../adapters/weather/weather-store.js'
import type { Chat } from '../bot/chat-ports.js'
import { exported } from '../bot/papers/record/export.js'
import { tick } from '../bot/posts/tick.js'
import { lookAgain } from '../bot/posts/watch-tick.js'
import type { Instant } from '../core/instant.js'
import { places, type Running } from './running.js'

/** A tick fetches weather no longer than this, s: posts must not wait for it. */
const refreshS = 20

/** Set once the bot is told to stop. */
export interface Stopping {
  is: boolean
}

/** One tick, timed, and known to readiness. Throws what it threw. */
export async function timedTick(running: Running, chat: Chat, stopping: Readonly<Stopping>, at: Instant): Promise<void> {
  const start = process.hrtime.bigint()
  let ok = false
  try {
    await oneTick(running, chat, stopping, at)
    ok = true
  } finally {
    running.readiness.ticked(ok)
    running.metrics.ticked(ok, secondsSince(start))
  }
}

/** Fetches weather where it has expired, queues what is due, sends what is queued. Once it is told to stop it begins nothing more. */
async function oneTick(running: Running, chat: Chat, stopping: Readonly<Stopping>, at: Instant): Promise<void> {
  const { config, wired, outbox, ports, slots, now, metrics, pausedUntil, looked } = running
  if (config.SEAMHAND_WEATHER.kind === 'live') await refreshAll(running, stopping, at)
  if (stopping.is) return
  const { sent, skipped } = await tick(at, {
    ...ports,
    slots,
    looked,
    speaker: openSpeakers,
    goOn: async () => {
      await new Promise((go) => setImmediate(go))
      return !stopping.is
    },
    channelOf: (site, { channel }) => channel ?? (config.slack === null ? channelIdOf(site.site) : null),
    drain: {
      outbox: { ...outbox, take: async (...turn) => (stopping.is ? [] : outbox.take(...turn)) },
      draw: ports.draw,
      record: async (site, date) => {
        const view = await ports.store.view(site)
        return view === null ? null : exported({ view, kept: ports.store, sheets: ports.sheets, now: now(), lang: null }, 'pdf', [date])
      },
      chat,
      clock: now,
      pausedUntil,
      stopping: () => stopping.is,
      wait: (seconds) => new Promise((go) => setTimeout(go, seconds * 1000)),
      note: (what) => wired.log.warn(what, 'post not sent')
    }
  })
  metrics.posted('sent', sent.length)
  metrics.posted('skipped', skipped.length)
}

/** Where other alerts are in force than before, the watch looks at once. */
async function refreshAll(running: Running, stopping: Readonly<Stopping>, at: Instant): Promise<void> {
  const { live, now, looked } = running
  const began = now()
  const enough = () => stopping.is || now() - began >= refreshS
  const sites = (await places(running)).filter(({ settings }) => !settings.closed && !settings.invented)
  const open = sites.map(({ settings }) => settings)
  const [changed] = await Promise.all([live.refreshAlerts(open, at, enough), live.refreshAll(open, at, enough)])
  for (const { key, settings } of sites) if (changed.has(cellOf(settings.lat, settings.lon))) lookAgain(looked, key)
}
