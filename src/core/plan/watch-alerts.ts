import { type Alert, isSame, isWorse, type ToldAlert, toldOf } from '../weather/alert.js'

/** More are not told apart on one day. */
const mostTold = 60

/** Alerts that nobody was told of, or that are worse than when they were told; and those told that are in force no more. */
export function alertNews(
  told: readonly ToldAlert[],
  seen: readonly Alert[]
): { readonly alerts: readonly Alert[]; readonly over: readonly ToldAlert[] } {
  const before = (alert: Alert) => told.filter((one) => isSame(alert, one))
  return {
    alerts: seen.filter((alert) => before(alert).every((one) => isWorse(alert, one))),
    over: told.filter((one) => !one.over && !seen.some((alert) => isSame(alert, one)))
  }
}

/**
 * What is told from then on; the member is absent where that is nothing. What is over is kept: a service that was away for a while may
 * bring the same message again, and that is no news.
 */
export function alertsSaid(told: readonly ToldAlert[], seen: readonly Alert[]): { readonly alerts?: readonly ToldAlert[] } {
  const gone = told.filter((one) => !seen.some((alert) => isSame(alert, one))).map((one) => ({ ...one, over: true }))
  const all = [...gone, ...seen.map(toldOf)].slice(-mostTold)
  return all.length === 0 ? {} : { alerts: all }
}
