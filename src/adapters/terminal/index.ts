import { ask } from './ask.js'
import { exportLog } from './export.js'
import { formula } from './formula.js'
import { manifest } from './manifest.js'
import { prompt } from './prompt.js'
import { replay } from './replay.js'
import { tick } from './tick.js'
import type { Subcommand } from './tools.js'
import { verify } from './verify.js'

/** `seamhand NAME …` (CONTRACT §13). A new one is a file and a line here. */
export const subcommands = { serve: prompt, ask, verify, replay, export: exportLog, formula, tick, manifest } as const satisfies Record<string, Subcommand>
