import { type Beside, type Done, refuse, told } from '../context.js'
import { usages } from '../text/usages.js'
import type { Said } from '../words/said.js'

/** The commands, or one of them, rendered from the same data that refusals quote. */
export async function help({ about }: Extract<Said, { command: 'help' }>, _beside: Beside): Promise<Done> {
  if (about !== null && !(about in usages)) return refuse('unknown-command', about)
  const names = (about === null ? Object.keys(usages) : [about]) as (keyof typeof usages)[]
  return told({ command: 'help', numbers: { about, usages: Object.fromEntries(names.map((name) => [name, usages[name].usage])) } })
}
