import { type Beside, type Done, refuse, told } from '../context.js'
import { guideSections } from '../text/guide-words.js'
import { type CommandName, usages } from '../text/usages.js'
import type { Said } from '../words/said.js'

/** The commands, one of them or the page for a crew, rendered from the same data that refusals quote. */
export async function help({ about }: Extract<Said, { command: 'help' }>, _beside: Beside): Promise<Done> {
  if (about === 'guide') return told({ command: 'help', numbers: { about, usages: usagesOf(guideSections.flatMap(({ commands }) => commands)) } })
  if (about !== null && !(about in usages)) return refuse('unknown-command', about)
  const names = (about === null ? Object.keys(usages) : [about]) as CommandName[]
  return told({ command: 'help', numbers: { about, usages: usagesOf(names) } })
}

function usagesOf(names: readonly CommandName[]): Readonly<Record<string, string>> {
  return Object.fromEntries(names.map((name) => [name, usages[name].usage]))
}
