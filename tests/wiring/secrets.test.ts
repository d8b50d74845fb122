import { afterEach, expect, it } from 'vitest'
import { createLog } from '../../src/adapters/log.js'
import { readConfig } from '../../src/config.js'
import { serve } from '../../src/wiring/serve.js'
import { wire } from '../../src/wiring/tools.js'
import { freshFolder, seamhands } from '../support/seamhand.js'
import { botToken, type Service, sign, startService } from '../support/slack.js'

seamhands()
let service: Service | null = null
afterEach(() => service?.close())

/** Every secret that may be set, each with a mark that nothing else has. */
const marks = {
  SLACK_SIGNING_SECRET: 'sentinel-signing-5f1e',
  SLACK_BOT_TOKEN: botToken,
  OPEN_METEO_KEY: 'sentinel-weather-77aa',
  SEAMHAND_CONTACT: 'sentinel-contact@example.org'
} as const

it('secrets of the settings stand in no answer, no error page, no metrics and no log line', async () => {
  service = await startService()
  const written: string[] = []
  const log = createLog('debug', { write: (line) => void written.push(line) })
  let stop: () => void = () => undefined
  const stopped = new Promise<void>((resolve) => {
    stop = resolve
  })
  try {
    const env = {
      PORT: '0',
      HOST: '127.0.0.1',
      SEAMHAND_DATA: freshFolder(),
      LOG_LEVEL: 'debug',
      SEAMHAND_WEATHER: 'none',
      SLACK_API_URL: service.apiUrl,
      ...marks
    }
    const terminal = {
      out: (text: string) => void written.push(text),
      err: (text: string) => void written.push(text),
      lines: async function* () {},
      now: () => Math.floor(Date.now() / 1000)
    }
    const config = readConfig(env)
    const exit = serve(config, { ...wire(config, terminal, true), log }, stopped)
    for (let tries = 0; tries < 500 && !written.some((line) => line.startsWith('ready ')); tries += 1)
      await new Promise((resolve) => setTimeout(resolve, 20))
    const base =
      written
        .find((line) => line.startsWith('ready '))
        ?.slice(6)
        .trim() ?? ''
    const ts = Math.floor(Date.now() / 1000)
    const post = async (body: string, signature: string, type = 'application/x-www-form-urlencoded') => {
      const headers = { 'content-type': type, 'x-slack-request-timestamp': String(ts), 'x-slack-signature': signature }
      written.push(await (await fetch(`${base}/slack/events`, { method: 'POST', headers, body })).text())
    }
    const command = new URLSearchParams({
      command: '/seamhand',
      text: 'spray air 20',
      team_id: 'T0',
      user_id: 'U1',
      channel_id: 'C1',
      trigger_id: '1.2',
      response_url: service.hook
    }).toString()
    await post(command, sign(command, ts, marks.SLACK_SIGNING_SECRET))
    await post(command, 'v0=forged')
    await post('{', sign('{', ts, marks.SLACK_SIGNING_SECRET), 'application/json')
    service.on('chat.postMessage', { status: 500, raw: 'no' })
    await post(command, sign(command, ts, marks.SLACK_SIGNING_SECRET))
    for (const path of ['/', '/healthz', '/readyz', '/metrics', '/slack/install', '/nothing', '/slack/events', '/%00', '/room/say']) {
      const response = await fetch(`${base}${path}`)
      written.push(JSON.stringify([...response.headers]), await response.text())
    }
    stop()
    expect(await exit).toBe(0)
  } finally {
    stop()
  }
  expect(service.calls.length).toBeGreaterThan(0)
  expect(written.join('')).toContain('"level"')
  for (const [name, secret] of Object.entries(marks))
    expect(
      written.filter((line) => line.includes(secret)),
      name
    ).toEqual([])
})
