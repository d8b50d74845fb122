import type { StatementData } from '../../../core/log/data.js'
import { type Fields, picked } from '../fields.js'

/** The statements of a message. */
export function statementOf(fields: Fields): StatementData {
  return picked(fields, [
    'rainFalling',
    'rainChancePct',
    'thunder',
    'substrateDry',
    'fleeceDry',
    'lapDry',
    'substrateClean',
    'lapClean',
    'compatibility',
    'intakes',
    'deckMoisturePassed',
    'sheet',
    'start',
    'tight',
    'purged',
    'nozzle',
    'tested',
    'thumbTest',
    'lead',
    'toolV'
  ])
}
