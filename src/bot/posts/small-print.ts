import { toIso } from '../../core/instant.js'
import { ageOf } from '../../core/weather/lookup.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import type { How } from '../views/how.js'
import { notesOf } from '../views/notes.js'
import type { PostOn } from './post.js'

/** Where the weather is from, with its licence, and by which limits: the same line as under every answer. */
export function sourceNotes(on: PostOn, how: How, text: Text): readonly string[] {
  return notesOf(source(on), null, how, text)
}

/** What the line of weather and limits is made of. */
function source({ forecast, weatherLacks, sheet, site, settings, now }: PostOn): Answer {
  const weather =
    forecast === null
      ? null
      : {
          source: forecast.source,
          issuedAt: toIso(forecast.issuedAt),
          stale: ageOf(forecast, now) !== 'fresh',
          sample: forecast.sample
        }
  return {
    command: 'spray',
    site,
    at: now,
    outcome: null,
    outcomes: null,
    activities: { spray: null, lay: null, weld: null, people: null },
    findings: [],
    numbers: {},
    unlogged: false,
    invented: settings.invented,
    changesAt: null,
    limits: { id: sheet.id, version: sheet.version, sha256: sheet.sha256 },
    weather,
    weatherLacks,
    logged: [],
    decision: null,
    undoUntil: null
  }
}
