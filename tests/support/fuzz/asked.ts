import { readSheets } from '../../../src/adapters/limits/files.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import type { Ports } from '../../../src/bot/context.js'
import { respond } from '../../../src/bot/respond.js'
import type { Forecast } from '../../../src/core/weather/forecast.js'
import { draw } from '../../../src/wiring/papers.js'
import { blockProblems } from '../blocks.js'
import type { Seamhand } from '../seamhand.js'

const sheets = readSheets(null)

/** What is wrong with answers that are given under a forecast; null: nothing. Nothing of it is logged. */
export async function askedFault(forecast: Forecast, seamhand: Seamhand, now: number, texts: readonly string[]): Promise<string | null> {
  for (const text of texts) {
    let bug: unknown = null
    const report = (error: unknown) => {
      bug = error
      return 'bug'
    }
    const ports: Ports = { store: seamhand.store, weather: fixedWeather(forecast), sheets, draw, lang: 'en', units: 'metric', report }
    const ask = { text, at: now, workspace: 'local', site: null, channel: null, user: 'U1', role: 'crew' as const, via: 'ask' as const }
    const { reply } = await respond({ ...ask, lang: null, units: null, log: false, claim: null }, ports)
    if (bug !== null) return `${text}: ${bug instanceof Error ? bug.stack : String(bug)}`
    const problems = blockProblems(reply)
    if (problems.length > 0) return `${text}: ${problems.join('; ')}`
    const wild = reply.findings.find((finding) =>
      Object.values(finding as object).some((value) => typeof value === 'number' && !Number.isFinite(value))
    )
    if (wild !== undefined) return `${text}: ${JSON.stringify(wild)}`
  }
  return null
}
