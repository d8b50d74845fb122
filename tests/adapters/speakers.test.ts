import { afterAll, expect, test } from 'vitest'
import { sampleForecast } from '../../src/adapters/weather/sample/index.js'
import { posts } from '../../src/bot/posts/index.js'
import type { PostOn } from '../../src/bot/posts/post.js'
import type { Speaker } from '../../src/bot/posts/speaker.js'
import { sheet } from '../support/facts.js'
import { iso } from '../support/instant.js'
import { emptyMemory, emptyRecord } from '../support/memory.js'

// A thread needs a file that Node runs as it is: the built one.
const built = new URL('../../dist/adapters/speakers.js', import.meta.url).href
const { openSpeakers } = (await import(built)) as typeof import('../../src/adapters/speakers.js')

const now = iso('2026-06-10T03:30:00Z')
const limits = sheet()

function on(site: string): PostOn {
  const memory = emptyMemory({ lang: site.endsWith('2') ? 'fr' : 'en' })
  const forecast = sampleForecast(now, memory.settings.zone)
  return {
    site,
    settings: memory.settings,
    memory,
    record: emptyRecord,
    forecast,
    alerts: null,
    weatherLacks: null,
    sheet: limits,
    date: '2026-06-10',
    now
  }
}

const opened: Speaker[] = []
function open(processors: number): Speaker {
  const speaker = openSpeakers(processors)
  if (speaker === null) throw new Error('none')
  opened.push(speaker)
  return speaker
}

afterAll(async () => {
  for (const speaker of opened) await speaker.close()
})

test('threads say, byte for byte, what would be said here, each post to whom it is asked for', async () => {
  const speaker = open(3)
  expect(speaker.width).toBeGreaterThan(2)
  const sites = ['s1', 's2', 's3', 's4', 's5']
  const told = await Promise.all(sites.flatMap((site) => (['morning', 'evening'] as const).map((kind) => speaker.speak(kind, on(site)))))
  const here = sites.flatMap((site) => (['morning', 'evening'] as const).map((kind) => posts[kind].speak(on(site))))
  expect(JSON.stringify(told)).toBe(JSON.stringify(here))
})

test('what cannot be told, and what is asked of a thread that has ended, is left to who asked', async () => {
  const speaker = open(2)
  const broken = { ...on('s1'), date: 'no date at all', memory: null } as unknown as PostOn
  expect(await speaker.speak('morning', broken)).toBeNull()
  expect(await speaker.speak('morning', on('s1'))).not.toBeNull()
  const asked = speaker.speak('morning', on('s1'))
  await speaker.close()
  await asked
  expect(await speaker.speak('morning', on('s1'))).toBeNull()
})

test('one processor has none to spare', () => {
  expect(openSpeakers(1)).toBeNull()
})
