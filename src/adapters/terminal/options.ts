import { type ParseArgsConfig, parseArgs } from 'node:util'
import { type Lang, langs } from '../../bot/answer.js'
import { Stop } from './io.js'

type Options = NonNullable<ParseArgsConfig['options']>

/** Reads options strictly; a bad one is exit 2 with its name. `--` ends the options. */
export function readOptions<const O extends Options>(args: readonly string[], options: O) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
  } catch (error) {
    throw new Stop(error instanceof Error ? error.message : String(error), 2, 'bad-option')
  }
}

/** The language of an option; null where none was said. Another one is exit 2. */
export function langOption(said: string | undefined): Lang | null {
  const lang = langs.find((one) => one === said) ?? null
  if (lang === null && said !== undefined) throw new Stop(`no such language: ${said.slice(0, 40)} (${langs.join(', ')})`, 2, 'bad-option')
  return lang
}
