import { type ParseArgsConfig, parseArgs } from 'node:util'
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
