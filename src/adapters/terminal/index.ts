import { ask } from './ask.js'
import { exportLog } from './export.js'
import { formula } from './formula.js'
import { manifest } from './manifest.js'
import { replay } from './replay.js'
import { tick } from './tick.js'
import type { Subcommand } from './tools.js'
import { verify } from './verify.js'

/** `seamhand NAME …`. A new one is a file and a line here; `serve` is main's own. */
export const subcommands = { ask, verify, replay, export: exportLog, formula, tick, manifest } as const satisfies Record<string, Subcommand>
