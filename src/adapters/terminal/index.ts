import { ask } from './ask.js'
import { backup } from './backup.js'
import { exportLog } from './export.js'
import { forget } from './forget.js'
import { formula } from './formula.js'
import { manifest } from './manifest.js'
import { migrate } from './migrate.js'
import { move } from './move.js'
import { replay } from './replay.js'
import { restore } from './restore.js'
import { tick } from './tick.js'
import type { Subcommand } from './tools.js'
import { verify } from './verify.js'

/** `seamhand NAME …`. A new one is a file and a line here; `serve` is main's own. */
export const subcommands = {
  ask,
  verify,
  replay,
  export: exportLog,
  formula,
  tick,
  manifest,
  migrate,
  move,
  backup,
  restore,
  forget
} as const satisfies Record<string, Subcommand>
