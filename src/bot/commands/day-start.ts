import { decide } from '../../core/decide.js'
import { type Beside, type Done, type OnSite, told } from '../context.js'
import { factsNow } from '../decision/facts-now.js'
import type { Said } from '../words/said.js'

/** `day start`: what must be stated before the first spray; the form for it comes with the answer. Logs nothing. */
export async function dayStart(_said: Extract<Said, { command: 'day start' }>, on: OnSite, _at: number, _beside: Beside): Promise<Done> {
  const { facts } = await factsNow(on)
  const { checklist, findings } = decide('spray', facts, on.sheet)
  const toState = findings.filter(({ group }) => group === 'checklist')
  return told({
    command: 'day',
    outcome: checklist,
    findings: toState,
    numbers: { start: true, toState: toState.filter(({ outcome }) => outcome !== 'go').length }
  })
}
