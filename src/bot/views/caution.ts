import type { Answer } from '../answer.js'
import type { Caution } from '../text/text.js'
import { type CommandName, isCommandName } from '../text/usages.js'

/** What usually hurts people at each kind of work; null where nothing does. */
export const usualCaution: Readonly<Record<CommandName, Caution | null>> = {
  spray: 'isocyanates',
  foam: 'isocyanates',
  kit: 'isocyanates',
  weld: 'hotAir',
  probe: 'hotAir',
  air: 'edges',
  laid: 'edges',
  bond: 'edges',
  seal: 'edges',
  fire: 'hotAir',
  detail: 'edges',
  punch: 'edges',
  day: 'isocyanates',
  strip: 'blade',
  sheets: 'blade',
  site: null,
  start: null,
  role: null,
  help: null,
  me: null,
  undo: null,
  correct: null
}

const hazards = ['thunder', 'ice', 'heat', 'cold'] as const

/** One caution only: the hazard that is there, else the usual one of the work. */
export function cautionFor({ command, findings }: Pick<Answer, 'command' | 'findings'>): Caution | null {
  for (const outcome of ['no-go', 'caution'] as const) {
    const hazard = hazards.find((rule) => findings.some((finding) => finding.rule === rule && finding.outcome === outcome))
    if (hazard !== undefined) return hazard
  }
  return isCommandName(command) ? usualCaution[command] : null
}
