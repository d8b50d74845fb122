import { describe, expect, it } from 'vitest'
import { speakEvening } from '../../../src/bot/posts/evening.js'
import { speakMorning } from '../../../src/bot/posts/morning.js'
import type { PostOn } from '../../../src/bot/posts/post.js'
import { speakWrapUp } from '../../../src/bot/posts/wrap-up.js'
import type { Alert } from '../../../src/core/weather/alert.js'
import { alertOf } from '../../support/alerts.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { iso } from '../../support/instant.js'
import { postOn } from '../../support/post-on.js'

const at = '2026-05-04T03:30:00Z'
const storm = alertOf()
const wind = alertOf({ id: 'wind', event: 'Wind Advisory', severity: 'moderate', from: iso('2026-05-04T02:00:00Z'), to: iso('2026-05-04T20:00:00Z') })
const flood = alertOf({ id: 'flood', event: 'Flood Advisory', severity: 'minor' })
const tomorrow = alertOf({ id: 'next', event: 'Heat Advisory', from: iso('2026-05-05T10:00:00Z'), to: iso('2026-05-05T18:00:00Z') })

const known = (all: readonly Alert[], asOf: number | null = iso(at)): Partial<PostOn> => ({ alerts: { source: 'nws', asOf, all } })
const morning = (change: Partial<PostOn>) => speakMorning(postOn(at, change), metric)

describe('the morning post', () => {
  it('has the alerts of the day, worst first, in site time, with whose they are and who says what to do', () => {
    const { text, brief } = morning(known([wind, flood, storm, tomorrow]))
    expect(text.split('\n').slice(1, 3)).toEqual([
      '△ Severe Thunderstorm Warning, 14:00–16:00 (US National Weather Service): follow the service’s instruction',
      '△ Wind Advisory, until 22:00 (US National Weather Service): follow the service’s instruction'
    ])
    expect(text).not.toMatch(/Flood Advisory|Heat Advisory|not known/)
    // Those that the watch need not tell again.
    expect(brief?.alerts).toEqual([{ id: 'a', severity: 'severe', event: 'Severe Thunderstorm Warning', over: false }])
  })

  it('says nothing where there are none, and nothing where no service covers the site', () => {
    const without = morning({}).text
    expect(without).not.toContain('alert')
    expect(morning({}).brief).not.toHaveProperty('alerts')
    expect(morning(known([])).text).toBe(without)
  })

  it('says that they are not known where the service did not answer, and still has those that stand', () => {
    expect(morning(known([], null)).text).toMatch(/^\? severe-weather alerts not known$/m)
    const { text } = morning(known([storm], iso('2026-05-04T02:59:00Z')))
    expect(text).toMatch(/^△ Severe Thunderstorm Warning/m)
    expect(text).toMatch(/^\? severe-weather alerts not known since 04:59$/m)
  })

  it('changes no answer: the windows and the head are those of the rules', () => {
    const [own, warned] = [morning({}), morning(known([storm]))]
    expect(warned.text.split('\n').filter((line) => !line.includes('Thunderstorm Warning'))).toEqual(own.text.split('\n'))
  })

  it('has them without a forecast too', () => {
    expect(morning({ ...known([storm]), forecast: null }).text).toMatch(/^△ Severe Thunderstorm Warning/m)
  })

  it('keeps within the limits of a message in every language, and shows a hostile text as text', () => {
    const many = Array.from({ length: 30 }, (_, n) => alertOf({ id: `${n}`, event: `<!channel> ${'&'.repeat(100)}` }))
    for (const how of hows) {
      const spoken = speakMorning(postOn(at, known(many)), how)
      expect(blockProblems(spoken)).toEqual([])
      expect(spoken.text).not.toContain('<!channel>')
      expect(spoken.text).toContain('26')
    }
  })
})

it('the evening post has those of tonight and of the next working day', () => {
  const { text } = speakEvening(postOn('2026-05-04T15:00:00Z', known([wind, tomorrow, storm], iso('2026-05-04T15:00:00Z'))), metric)
  expect(text).toMatch(/^△ Heat Advisory, 12:00–20:00/m)
  expect(text).toMatch(/^△ Wind Advisory, until Mon 4 May 22:00/m)
  expect(text).not.toContain('Thunderstorm Warning')
})

it('the wrap-up has those until the next work begins', () => {
  const night = alertOf({ id: 'night', from: iso('2026-05-04T23:00:00Z'), to: iso('2026-05-05T02:00:00Z'), expiresAt: iso('2026-05-05T02:00:00Z') })
  const { text } = speakWrapUp(postOn('2026-05-04T16:00:00Z', known([night, tomorrow], iso('2026-05-04T16:00:00Z'))), metric)
  expect(text).toMatch(/^△ Severe Thunderstorm Warning, Tue 5 May 01:00–Tue 5 May 04:00/m)
  expect(text).not.toContain('Heat Advisory')
})
