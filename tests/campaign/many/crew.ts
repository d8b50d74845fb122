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

const mostTries = 400

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
  for (let tries = 1; tries <= mostTries; tries += 1) {
    const bases = up()
    const base = bases[Math.floor(random() * bases.length)]
    const text = base === undefined ? null : await once(base, command, clock)
    if (text !== null) return { trigger: command.trigger, text, tries }
    await new Promise((wait) => setTimeout(wait, 25))
  }
  throw new Error(`${command.trigger} was never acknowledged`)
}

const agent = new Agent({ keepAlive: true, maxSockets: 64 })

/** The text of an acknowledgement; null where there was none: cut off, "working on it", or a failure that was said. */
function once(base: string, { trigger, channel, text }: Command, clock: SharedClock): Promise<string | null> {
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
      response.on('error', () => resolve(null))
      response.on('aborted', () => resolve(null))
      response.on('end', () => resolve(response.statusCode === 200 ? acknowledged(Buffer.concat(parts).toString('utf8')) : null))
    })
    sent.on('error', () => resolve(null))
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
