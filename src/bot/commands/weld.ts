import type { WelderFact } from '../../core/facts.js'
import { type Done, type OnSite, told } from '../context.js'
import { type Decided, decideOnSite } from '../decision/decide-on-site.js'
import { logFacts } from '../decision/log-facts.js'
import { iso } from '../json.js'
import type { Said } from '../words/said.js'

/** Logs what was said, decides weld, shows all welders in use. */
export async function weld(said: Extract<Said, { command: 'weld' }>, on: OnSite, at: number): Promise<Done> {
  await logFacts(on, said.reading, said.statement, at)
  const decided = await decideOnSite(on, 'weld')
  return told({ command: 'weld', ...decided.told, numbers: weldNumbers(decided) })
}

function weldNumbers({ facts }: Decided) {
  return {
    sheetC: facts.sheetC.value,
    dewMarginK: facts.sheetDewMarginK.value,
    dropPct: facts.dropPct.value,
    rainChancePct: facts.rainChancePct.value,
    welders: facts.welders.map(shown)
  }
}

export function shown({ name, status, lapsedBy, widthMm, at }: WelderFact) {
  return { name, cleared: status === 'cleared', lapsedBy, widthMm, at: iso(at) }
}
