import { z } from 'zod'

/** Settings of CONTRACT §11: the only reader of the environment. A later part adds its own here. */
const schema = z.object({
  PORT: z.coerce.number().int().min(0).max(65535).default(3000),
  HOST: z.string().min(1).optional(),
  SEAMHAND_DATA: z.string().min(1).default('.seamhand'),
  DATABASE_URL: z.string().regex(/^postgres(ql)?:\/\//, 'must be a postgres:// or postgresql:// address').optional(),
  SEAMHAND_LIMITS: z.string().min(1).optional(),
  SEAMHAND_WEATHER: z.string().default('met,nws,open-meteo').transform(weatherChoice),
  SEAMHAND_CONTACT: z.string().regex(/[@.]/, 'must be an e-mail address or a web address').optional(),
  MET_URL: z.url().default('https://api.met.no/weatherapi/locationforecast/2.0'),
  SEAMHAND_LANG: z.enum(['en', 'es', 'fr']).default('en'),
  SEAMHAND_UNITS: z.enum(['metric', 'us']).default('metric'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info')
})

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

export type Config = z.infer<typeof schema>

/** Names of the settings, for the check that the README lists them all. */
export const settingNames: readonly string[] = Object.keys(schema.shape)

export class ConfigError extends Error {
  override readonly name = 'ConfigError'
}

/** Reads the settings; every problem at once, each with its name. An empty value counts as not set. */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  const set = Object.fromEntries(Object.entries(env).filter(([key, value]) => settingNames.includes(key) && value !== undefined && value !== ''))
  const read = schema.safeParse(set)
  if (read.success) return read.data
  throw new ConfigError(read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('\n'))
}
