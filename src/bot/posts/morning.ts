import { failedBonds } from '../../core/closing/failed-bonds.js'
import { dayMarks } from '../../core/instant.js'
import { type Outlook, outlook, roofOfDay } from '../../core/plan/outlook.js'
import { isSevere, standing, toldOf } from '../../core/weather/alert.js'
import { iso } from '../json.js'
import { dayPaper } from '../papers/day-paper.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { bondFirst, ledBy } from '../views/first.js'
import { type How, howOf } from '../views/how.js'
import { layOut } from '../views/page.js'
import { alertLinesOf, dayCautions, dayHead, plannedLines } from './day-lines.js'
import { kitNow } from './kit-now.js'
import { bindingLines, hazardLines, kitLines, weatherLines, workLines } from './morning-lines.js'
import type { Post, PostOn, Written } from './post.js'
import { sourceNotes } from './small-print.js'
import type { Brief } from './summary.js'

/** The first look of the day: go or not, which hours, what binds, kits, people. */
export const morning: Post = {
  time: (settings) => settings.morning,
  wants: [],
  speak: (on) => speakMorning(on, howOf(on.settings))
}

/** The morning post in a language and system of units. */
export function speakMorning(on: PostOn, how: How): Written {
  const { memory, forecast, sheet, date, now } = on
  const text = texts[how.lang]
  const roof = roofOfDay(memory, forecast, sheet, date, now)
  const day = outlook(memory, forecast, sheet, date, now, roof)
  const planned = plannedLines(on, day, now, how, text)
  const page = {
    head: dayHead(on, day, how, text),
    lines: [
      ...alertLinesOf(on, date, now, how, text),
      ...(day.known ? knownLines(on, day, planned, how, text) : [text.posts.noForecast, ...workLines(day, on, how, text)])
    ],
    details: day.known ? bindingLines(day, ['lay', 'weld'], how, text) : [],
    notes: [...dayCautions(day, text), ...sourceNotes(on, how, text)]
  }
  return {
    ...layOut(ledBy(page, bondFirst(failedBonds([memory.yesterday, memory.today]), text), text), how.lang),
    papers: day.known ? dayPaper({ ...on, roof }, day, how) : [],
    brief: briefOf(on, day)
  }
}

function briefOf({ alerts, now, settings }: PostOn, day: Outlook): Brief {
  const { outcome, windows, binding } = day.activities.spray
  const best = windows.find((window) => window.outcome === outcome)
  const told = standing(alerts, now, now, dayMarks(day.date, settings.zone).midnight).filter(isSevere).map(toldOf)
  return {
    outcome,
    from: iso(best?.from ?? null),
    to: iso(best?.to ?? null),
    binding: binding?.rule ?? null,
    ...(told.length === 0 ? {} : { alerts: told })
  }
}

function knownLines(on: PostOn, day: Outlook, planned: readonly string[], how: How, text: Text): readonly string[] {
  return [
    ...workLines(day, on, how, text),
    ...bindingLines(day, ['spray'], how, text),
    ...planned,
    ...weatherLines(day, how, text),
    ...kitNow(on, how, text),
    ...kitLines(day, on.sheet, how, text),
    ...hazardLines(day, how, text)
  ]
}
