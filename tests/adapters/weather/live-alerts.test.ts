import { describe, expect, it } from 'vitest'
import type { AlertSource, FetchedAlerts } from '../../../src/adapters/weather/alert-source.js'
import type { Place } from '../../../src/adapters/weather/cells.js'
import { liveAlerts } from '../../../src/adapters/weather/live-alerts.js'
import { SourceDown } from '../../../src/adapters/weather/source-down.js'
import type { Alert } from '../../../src/core/weather/alert.js'
import { alertOf } from '../../support/alerts.js'
import { iso } from '../../support/instant.js'
import { memoryWeatherStore } from '../../support/weather-store.js'

const noon = iso('2026-05-04T12:00:00Z')
const never = () => false
const place = { lat: 33.521, lon: -86.81, zone: 'America/Chicago', invented: false }
const near = { ...place, lat: 33.519 }
const elsewhere = { ...place, lat: 34 }
const abroad = { ...place, lat: 50, lon: 8 }

const fresh = (all: readonly Alert[] | null, note: string | null = 'a note'): FetchedAlerts => ({ kind: 'fresh', all, expiresAt: 0, note })
const storm = alertOf({ id: 'storm' })

function scripted(answers: readonly (FetchedAlerts | Error)[]) {
  const asked: { readonly lat: number; readonly note: string | null }[] = []
  const source: AlertSource = {
    name: 'nws',
    covers: (_lat, lon) => lon < 0,
    fetch: async (lat, _lon, note) => {
      asked.push({ lat, note })
      const answer = answers[asked.length - 1]
      if (answer === undefined) throw new Error('asked once too often')
      if (answer instanceof Error) throw answer
      return answer
    }
  }
  const store = memoryWeatherStore()
  const notes: string[] = []
  const open = () => liveAlerts({ sources: [source], store, note: (_what, message) => void notes.push(message) })
  return { ...open(), open, asked, notes }
}

const refreshed = async ({ refreshAll }: Pick<ReturnType<typeof scripted>, 'refreshAll'>, places: readonly Place[], now: number) => [
  ...(await refreshAll(places, now, never))
]

describe('liveAlerts', () => {
  it('is not known before the first answer, and nothing where no source covers the place', async () => {
    const { at, refreshAll, asked } = scripted([])
    expect(await at(place, noon)).toEqual({ source: 'nws', asOf: null, all: [] })
    expect(await at(abroad, noon)).toBeNull()
    expect((await refreshAll([abroad], noon, never)).size).toBe(0)
    expect(asked).toEqual([])
  })

  it('asks once for all sites of a cell, every five minutes, with the note of the answer kept; says which cells changed', async () => {
    const weather = scripted([fresh([storm]), fresh([]), { kind: 'unchanged', expiresAt: 0 }, fresh([]), fresh([storm]), fresh([])])
    expect(await refreshed(weather, [place, near, elsewhere], noon)).toEqual(['33.52,-86.81'])
    expect(weather.asked.map(({ lat }) => lat)).toEqual([33.52, 34])
    for (let at = noon + 60; at < noon + 300; at += 60) expect(await refreshed(weather, [place, near, elsewhere], at)).toEqual([])
    expect(await refreshed(weather, [place, elsewhere], noon + 300)).toEqual([])
    expect(weather.asked.slice(2)).toEqual([
      { lat: 33.52, note: 'a note' },
      { lat: 34, note: 'a note' }
    ])
    expect(await weather.at(near, noon + 300)).toEqual({ source: 'nws', asOf: noon + 300, all: [storm] })
    expect(await weather.at(elsewhere, noon + 300)).toEqual({ source: 'nws', asOf: noon + 300, all: [] })
    // Another server over the same store waits for its turn too; then the alert is over here and begins there.
    const other = weather.open()
    expect(await refreshed(other, [place, elsewhere], noon + 599)).toEqual([])
    expect((await refreshed(other, [elsewhere, place], noon + 600)).sort()).toEqual(['33.52,-86.81', '34.00,-86.81'])
  })

  it('keeps what was known while the service is away, as of when it was, and leaves a service alone that is away for all', async () => {
    const weather = scripted([fresh([storm]), new SourceDown('US NWS cannot be reached', null, noon + 1200), fresh([])])
    await weather.refreshAll([place], noon, never)
    await weather.refreshAll([place], noon + 300, never)
    expect(weather.asked).toHaveLength(2)
    expect(weather.notes).toEqual(['US NWS cannot be reached'])
    expect(await weather.at(place, noon + 360)).toEqual({ source: 'nws', asOf: noon, all: [storm] })
    await weather.refreshAll([place, elsewhere], noon + 600, never)
    expect(weather.asked).toHaveLength(2)
    expect(await refreshed(weather, [place], noon + 1200)).toEqual(['33.52,-86.81'])
  })

  it('an answer that cannot be read is the fault of one place', async () => {
    const weather = scripted([new SourceDown('malformed', 200, noon + 300), fresh([])])
    await weather.refreshAll([place, elsewhere], noon, never)
    expect(weather.asked).toHaveLength(2)
    expect(await weather.at(place, noon)).toMatchObject({ asOf: null })
    expect(await weather.at(elsewhere, noon)).toMatchObject({ asOf: noon })
  })

  it('has nothing for a place that the service says it does not cover', async () => {
    const weather = scripted([fresh(null, null)])
    expect(await refreshed(weather, [place], noon)).toEqual([])
    expect(await weather.at(place, noon)).toBeNull()
  })

  it('tells nobody who asks about the past what came later', async () => {
    const weather = scripted([fresh([storm])])
    await weather.refreshAll([place], noon, never)
    expect(await weather.at(place, noon - 301)).toEqual({ source: 'nws', asOf: null, all: [] })
  })
})
