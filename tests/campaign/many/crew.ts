import { Agent, request } from 'node:http'
import { secret, sign } from '../../support/slack.js'
import type { SharedClock } from './clock.js'

/** What a crew was told, and so may rely on. */
export interface Acknowledged {
  readonly trigger: string
  readonly text: string
}

export interface Command {
  readonly trigger: string
  readonly channel: string
  readonly text: string
}

/** Nobody waits longer. */
const mostMs = 300_000

/** A command whose readings no other has. */
export function commandOf(n: number, sites: number, random: () => number): Command {
  const site = Math.floor(random() * sites)
  const text = `air ${10 + (n % 15)} deck ${14 + (n % 9)} rh ${45 + (n % 30)} wind ${5 + (n % 9)} gust ${14 + (n % 8)} rain ${n % 20} % dry clean`
  return { trigger: `campaign.${n}`, channel: `C${site}`, text }
}

/**
 * Sends a command until it is acknowledged: to another instance where one breaks off, with the same trigger, as a delivery that comes
 * again. How often it had to be sent is counted.
 */
export async function say(
  command: Command,
  clock: SharedClock,
  up: () => readonly string[],
  random: () => number
): Promise<Acknowledged & { tries: number }> {
  const end = Date.now() + mostMs
  let [tries, last]: [number, string] = [0, 'no instance was up']
  while (Date.now() < end) {
    const bases = up()
    const base = bases[Math.floor(random() * bases.length)]
    if (base !== undefined) {
      tries += 1
      const told = await once(base, command, clock)
      if (told.text !== null) return { trigger: command.trigger, text: told.text, tries }
      last = told.why
    }
    // A busy one says that it works on it: it is not asked again at once.
    await new Promise((wait) => setTimeout(wait, last.startsWith('200') ? 500 : 25))
  }
  throw new Error(`${command.trigger} was never acknowledged: ${last}`)
}

const agent = new Agent({ keepAlive: true, maxSockets: 64 })

/** What came back; without a text there was no acknowledgement: cut off, "working on it", or a failure that was said. */
interface Told {
  readonly text: string | null
  readonly why: string
}

function once(base: string, { trigger, channel, text }: Command, clock: SharedClock): Promise<Told> {
  const body = new URLSearchParams({
    team_id: 'T0',
    channel_id: channel,
    user_id: 'U1',
    command: '/spray',
    text,
    api_app_id: 'A0',
    is_enterprise_install: 'false',
    trigger_id: trigger
  }).toString()
  const ts = clock.now()
  const headers = {
    'content-type': 'application/x-www-form-urlencoded',
    'content-length': Buffer.byteLength(body),
    'x-slack-request-timestamp': String(ts),
    'x-slack-signature': sign(body, ts, secret)
  }
  return new Promise((resolve) => {
    const sent = request(`${base}/slack/events`, { method: 'POST', agent, headers }, (response) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part))
      response.on('error', () => resolve({ text: null, why: 'cut off' }))
      response.on('end', () => {
        const got = Buffer.concat(parts).toString('utf8')
        resolve({ text: response.statusCode === 200 ? acknowledged(got) : null, why: `${response.statusCode} ${got.slice(0, 300)}` })
      })
    })
    sent.on('error', ({ message }) => resolve({ text: null, why: message }))
    sent.setTimeout(15_000, () => sent.destroy())
    sent.end(body)
  })
}

function acknowledged(text: string): string | null {
  try {
    const reply = JSON.parse(text) as { response_type?: string; text?: string }
    return reply.response_type === 'in_channel' ? (reply.text ?? null) : null
  } catch {
    return null
  }
}
