import type { z } from 'zod'
import { metAnswer } from './met/schema.js'
import { nwsAnswer } from './nws/schema.js'
import { openMeteoAnswer } from './open-meteo/schema.js'
import type { Parsed } from './parsed.js'

export interface SourceFormat {
  /** Whose data it is, for people to read. */
  readonly publisher: string
  /** Where in the answer its own part is found: what it is known by. */
  readonly mark: readonly [string, string]
  readonly answer: z.ZodType<Parsed>
}

/** The sources whose answers are understood. A new one: its folder and a line here. */
export const sources = {
  met: { publisher: 'MET Norway', mark: ['properties', 'timeseries'], answer: metAnswer },
  nws: { publisher: 'US NWS', mark: ['properties', 'temperature'], answer: nwsAnswer },
  'open-meteo': { publisher: 'Open-Meteo', mark: ['hourly', 'time'], answer: openMeteoAnswer }
} as const satisfies Record<string, SourceFormat>

export type SourceName = keyof typeof sources

export const sourceNames = Object.keys(sources) as readonly SourceName[]
