import { z } from 'zod'

/** The settings: the only reader of the environment. A later part adds its own here. */
const schema = z.object({
  PORT: z.coerce.number().int().min(0).max(65535).default(3000),
  HOST: z.string().min(1).optional(),
  SEAMHAND_DATA: z.string().min(1).default('.seamhand'),
  DATABASE_URL: z
    .string()
    .regex(/^postgres(ql)?:\/\//, 'must be a postgres:// or postgresql:// address')
    .optional(),
  SEAMHAND_LIMITS: z.string().min(1).optional(),
  SEAMHAND_WEATHER: z.string().default('met,nws,open-meteo').transform(weatherChoice),
  SEAMHAND_CONTACT: z.string().regex(/[@.]/, 'must be an e-mail address or a web address').optional(),
  MET_URL: webAddress().optional(),
  NWS_URL: webAddress().optional(),
  OPEN_METEO_URL: webAddress().optional(),
  OPEN_METEO_KEY: z.string().regex(/^\S+$/, 'must be a key without spaces').optional(),
  OPEN_METEO_NON_COMMERCIAL: z.stringbool('must be true or false').default(false),
  SLACK_SIGNING_SECRET: z.string().min(1).optional(),
  SLACK_BOT_TOKEN: z.string().startsWith('xoxb-', 'must be a bot token, xoxb-…').optional(),
  SLACK_APP_TOKEN: z.string().startsWith('xapp-', 'must be an app token, xapp-…').optional(),
  SLACK_CLIENT_ID: z.string().min(1).optional(),
  SLACK_CLIENT_SECRET: z.string().min(1).optional(),
  SLACK_STATE_SECRET: z.string().min(16, 'must have at least 16 characters').optional(),
  SEAMHAND_TOKEN_KEY: z.string().transform(tokenKeys).optional(),
  SLACK_API_URL: z.url().default('https://slack.com/api/').refine(safeAddress, 'must be https; plain http only for this machine'),
  SEAMHAND_LANG: z.enum(['en', 'es', 'fr']).default('en'),
  SEAMHAND_UNITS: z.enum(['metric', 'us']).default('metric'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info')
})

function webAddress() {
  return z.url({ protocol: /^https?$/, error: 'must be an http or https address' })
}

export type WeatherChoice =
  | { readonly kind: 'live'; readonly order: readonly string[] }
  | { readonly kind: 'sample' | 'none' }
  | { readonly kind: 'file'; readonly path: string }

export const weatherSources = ['met', 'nws', 'open-meteo'] as const

function weatherChoice(text: string, context: { addIssue: (message: string) => void }): WeatherChoice {
  if (text === 'sample' || text === 'none') return { kind: text }
  if (text.startsWith('file:') && text.length > 5) return { kind: 'file', path: text.slice(5) }
  const order = text.split(',').map((name) => name.trim())
  const unknown = order.filter((name) => !(weatherSources as readonly string[]).includes(name))
  if (unknown.length > 0) context.addIssue(`unknown source ${unknown.join(', ')}: use ${weatherSources.join(',')}, sample, none or file:PATH`)
  return { kind: 'live', order }
}

/** Keys of 32 bytes as base64, the newest first, parted by commas. */
function tokenKeys(text: string, context: { addIssue: (message: string) => void }): readonly Buffer[] {
  const keys = text.split(',').map((key) => Buffer.from(key.trim(), 'base64'))
  const written = (key: Buffer) => key.toString('base64').replace(/=+$/, '')
  const good = text.split(',').every((part, index) => keys[index]?.length === 32 && written(keys[index]) === part.trim().replace(/=+$/, ''))
  if (!good) context.addIssue('must be 32 bytes as base64 (openssl rand -base64 32), several parted by commas, the newest first')
  return keys
}

/** Tokens travel to this address: in the clear only to this machine. */
function safeAddress(text: string): boolean {
  const { protocol, hostname } = new URL(text)
  return protocol === 'https:' || ['127.0.0.1', 'localhost', '[::1]'].includes(hostname)
}

export type Config = z.infer<typeof schema> & { readonly slack: SlackChoice }

/** How to be in Slack; null: the local room. */
export type SlackChoice =
  | { readonly kind: 'http'; readonly botToken: string; readonly signingSecret: string }
  | { readonly kind: 'socket'; readonly botToken: string; readonly appToken: string }
  | ({ readonly kind: 'many'; readonly signingSecret: string; readonly tokenKeys: readonly Buffer[] } & OauthSettings)
  | null

interface OauthSettings {
  readonly clientId: string
  readonly clientSecret: string
  readonly stateSecret: string
}

/** Many workspaces need all five, and the tokens come by installing. Null: none of them is set. */
function manyChoice(read: z.infer<typeof schema>): SlackChoice | string {
  const { SLACK_CLIENT_ID: clientId, SLACK_CLIENT_SECRET: clientSecret, SLACK_STATE_SECRET: stateSecret, SEAMHAND_TOKEN_KEY: tokenKeys } = read
  if ([clientId, clientSecret, stateSecret, tokenKeys].every((each) => each === undefined)) return null
  const { SLACK_SIGNING_SECRET: signingSecret } = read
  const need = ['SLACK_CLIENT_ID', 'SLACK_CLIENT_SECRET', 'SLACK_STATE_SECRET', 'SEAMHAND_TOKEN_KEY', 'SLACK_SIGNING_SECRET'] as const
  const missing = need.filter((name) => read[name] === undefined)
  if (missing.length > 0) return `${missing.join(', ')}: missing, and many workspaces need ${need.join(', ')}`
  const other = (['SLACK_BOT_TOKEN', 'SLACK_APP_TOKEN'] as const).filter((name) => read[name] !== undefined)
  if (other.length > 0) return `${other.join(', ')}: one workspace or many, not both: with SLACK_CLIENT_ID tokens come by installing`
  return { kind: 'many', clientId, clientSecret, stateSecret, signingSecret, tokenKeys } as SlackChoice
}

/** A whole set or none: half a set is a problem, never the local room. */
function slackChoice(read: z.infer<typeof schema>): SlackChoice | string {
  const many = manyChoice(read)
  if (many !== null) return many
  const { SLACK_BOT_TOKEN: botToken, SLACK_SIGNING_SECRET: signingSecret, SLACK_APP_TOKEN: appToken } = read
  if (botToken === undefined) {
    return appToken === undefined && signingSecret === undefined ? null : 'SLACK_BOT_TOKEN: missing, and the other Slack settings need it'
  }
  if (appToken !== undefined) return { kind: 'socket', botToken, appToken }
  if (signingSecret !== undefined) return { kind: 'http', botToken, signingSecret }
  return 'SLACK_BOT_TOKEN: not enough alone: set SLACK_SIGNING_SECRET (HTTP) or SLACK_APP_TOKEN (Socket Mode) too'
}

/** The key travels to this address as well. */
function openMeteoProblem({ OPEN_METEO_URL: url, OPEN_METEO_KEY: key }: z.infer<typeof schema>): string | null {
  if (url === undefined || key === undefined || safeAddress(url)) return null
  return 'OPEN_METEO_URL: must be https where OPEN_METEO_KEY is set; plain http only for this machine'
}

/** Names of the settings, for the check that the README lists them all. */
export const settingNames: readonly string[] = Object.keys(schema.shape)

export class ConfigError extends Error {
  override readonly name = 'ConfigError'
}

/** Reads the settings; every problem at once, each with its name. An empty value counts as not set. */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  const set = Object.fromEntries(Object.entries(env).filter(([key, value]) => settingNames.includes(key) && value !== undefined && value !== ''))
  const read = schema.safeParse(set)
  const problems = read.success ? [] : read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`)
  const slack = read.success ? slackChoice(read.data) : null
  if (typeof slack === 'string') problems.push(slack)
  if (read.success && slack !== null && read.data.SEAMHAND_WEATHER.kind === 'sample') {
    problems.push('SEAMHAND_WEATHER: sample is invented weather and never answers in Slack')
  }
  const openMeteo = read.success ? openMeteoProblem(read.data) : null
  if (openMeteo !== null) problems.push(openMeteo)
  if (!read.success || typeof slack === 'string' || problems.length > 0) throw new ConfigError(problems.join('\n'))
  return { ...read.data, slack }
}
