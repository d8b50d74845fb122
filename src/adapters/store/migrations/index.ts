import type { Migration } from '../migrate.js'
import { first } from './0001-first.js'
import { installations } from './0002-installations.js'
import { entriesByDay } from './0003-entries-by-day.js'
import { outboxInTurn } from './0004-outbox.js'
import { statesAnew } from './0005-states-anew.js'
import { told } from './0006-told.js'
import { kitsEmptied } from './0007-kits-emptied.js'
import { alertsAndTurns } from './0008-alerts.js'
import { testsRejected } from './0009-tests-rejected.js'

/** In order; only ever added to. */
export const migrations: readonly Migration[] = [
  first,
  installations,
  entriesByDay,
  outboxInTurn,
  statesAnew,
  told,
  kitsEmptied,
  alertsAndTurns,
  testsRejected
]
