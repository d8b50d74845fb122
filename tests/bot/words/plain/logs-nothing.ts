import type { Said } from '../../../../src/bot/words/said.js'

/** Whether a command only shows or judges: no reading, statement, step, setting or item goes into the log with it. */
export function logsNothing(said: Said): boolean {
  switch (said.command) {
    case 'spray':
      return said.kit === null && empty(said.reading) && empty(said.statement)
    case 'air':
    case 'weld':
      return empty(said.reading) && empty(said.statement)
    case 'kit':
      return said.kit === null
    case 'bond':
      return said.bond === null
    case 'seal':
      return empty(said.seal)
    case 'fire':
      return empty(said.fire)
    case 'detail':
      return empty(said.details)
    case 'me':
      return said.lang === null && said.units === null && said.summary === null
    default:
      return showing.has(said.command)
  }
}

const showing: ReadonlySet<Said['command']> = new Set([
  'weld show',
  'weld chart',
  'strip',
  'sheets',
  'probe list',
  'punch list',
  'day',
  'day record',
  'site show',
  'help'
])

function empty(data: object): boolean {
  return Object.keys(data).length === 0
}
