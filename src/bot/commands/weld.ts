import type { Memory } from '../../core/gather/memory.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import { type WelderState, wholeWelder } from '../../core/log/states/welder.js'
import { generatorW, sectionFor, voltageDrop } from '../../core/welds/voltage.js'
import { type Done, type OnSite, told } from '../context.js'
import { type Decided, decideOnSite } from '../decision/decide-on-site.js'
import { logFacts } from '../decision/log-facts.js'
import { everyWelder, shown, welderNumbers } from '../decision/welder-numbers.js'
import type { Said } from '../words/said.js'

/** Logs what was said, decides weld, shows all welders in use, and what of any is on hold. */
export async function weld(said: Extract<Said, { command: 'weld' }>, on: OnSite, at: number): Promise<Done> {
  await logFacts(on, said.reading, said.statement, at)
  const decided = await decideOnSite(on, 'weld')
  return told({ command: 'weld', ...decided.told, numbers: weldNumbers(decided, await everyWelder(on.session), on.sheet) })
}

function weldNumbers({ facts, memory }: Decided, every: readonly WelderState[], sheet: LimitsSheet) {
  const held = every.filter(({ onHoldM }) => onHoldM > 0).map(({ name, onHoldM }) => ({ name, onHoldM }))
  return {
    sheetC: facts.sheetC.value,
    dewMarginK: facts.sheetDewMarginK.value,
    dropPct: facts.dropPct.value,
    ...powerNumbers(memory, sheet),
    rainChancePct: facts.rainChancePct.value,
    welders: facts.welders.map((fact) => {
      const state = every.find(({ name }) => name === fact.name) ?? wholeWelder(fact.name, null)
      const { onHoldM, clearedM, releasedM, chanceShort, coupons, drift, shortIn } = welderNumbers(state, fact, sheet)
      return { ...shown(fact), onHoldM, clearedM, releasedM, chanceShort, coupons, drift, shortIn }
    }),
    onHoldM: held.reduce((sum, { onHoldM }) => sum + onHoldM, 0),
    held
  }
}

/** What the lead stated today leaves at the tool, the generator that the tool wants, and the section that would keep the drop out of caution. */
function powerNumbers({ today }: Memory, { power, limits }: LimitsSheet) {
  const lead = today.latest.lead?.value
  if (lead === undefined) return { toolV: null, heatPct: null, generatorW: null, sectionMm2: null, mostDropPct: null }
  const input = { volts: lead.volts ?? power.volts, watts: lead.watts ?? power.watts, leadM: lead.leadM }
  const { toolV, heatPct, dropPct } = voltageDrop({ ...input, areaMm2: lead.areaMm2 })
  const most = limits.powerDrop.cautionAbove ?? limits.powerDrop.max
  const sectionMm2 = most === null || dropPct <= most ? null : sectionFor(input, most)
  const measured = today.latest.toolV
  const read = measured === undefined || measured.at < (today.latest.lead?.at ?? 0) ? null : measured.value
  return {
    toolV: read ?? toolV,
    heatPct: read === null ? heatPct : 100 * (read / input.volts) ** 2,
    generatorW: generatorW(input.watts),
    sectionMm2,
    mostDropPct: most
  }
}
