import { describe, expect, test } from 'vitest'
import { sampleForecast } from '../../../src/adapters/weather/sample/index.js'
import { speakMorning } from '../../../src/bot/posts/morning.js'
import { texts } from '../../../src/bot/text/index.js'
import { demoSite } from '../../../src/core/site.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { emptyMemory, emptyRecord } from '../../support/memory.js'

const now = iso('2026-05-04T03:30:00Z')

function on(forecast = true) {
  return {
    site: 'demo',
    settings: demoSite,
    memory: emptyMemory(),
    record: emptyRecord,
    forecast: forecast ? sampleForecast(now, 'Europe/Berlin') : null,
    alerts: null,
    weatherLacks: null,
    sheet: sheet(),
    date: '2026-05-04',
    now
  }
}

describe('the plan in the morning post', () => {
  test('last sheet by, what fits and what to stage', () => {
    const { text } = speakMorning(on(), metric)
    expect(text).toMatch(/^Last sheet in by \d\d:\d\d, all welded and tied in by \d\d:\d\d \(.+\) · binds: /m)
    expect(text).toMatch(/^Fits: about \d+ m², slowest: spraying$/m)
    expect(text).toMatch(/^Stage: \d+ kits, \d+0 nozzles, \d+ cover strips$/m)
  })

  test('nothing of it without a forecast', () => {
    expect(speakMorning(on(false), metric).text).not.toMatch(/Last sheet|No further sheet|Fits|Stage/)
  })

  test('in every language and system of units, within the limits of a message', () => {
    for (const how of hows) {
      const spoken = speakMorning(on(), how)
      expect(blockProblems(spoken)).toEqual([])
      const begin = texts[how.lang].day.lastSheet('', '').split(' ')[0] as string
      expect(spoken.text).toContain(`\n${begin} `)
    }
  })
})
