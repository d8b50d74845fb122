import { failedBonds } from '../../core/closing/failed-bonds.js'
import { dayMarks, type Instant } from '../../core/instant.js'
import { nightOf } from '../../core/plan/night.js'
import { type Outlook, outlook, roofOfDay } from '../../core/plan/outlook.js'
import { nextWorkday } from '../../core/schedule.js'
import { dayPaper } from '../papers/day-paper.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { bondFirst, ledBy } from '../views/first.js'
import { type How, howOf } from '../views/how.js'
import { layOut } from '../views/page.js'
import { alertLinesOf, dayCautions, dayHead, plannedLines } from './day-lines.js'
import { kitsTonight } from './kits-tonight.js'
import { bindingLines, hazardLines, kitLines, weatherLines, workLines } from './morning-lines.js'
import type { Post, PostOn, Written } from './post.js'
import { sourceNotes } from './small-print.js'

/** What 05:30 would be too late for: kits into the warm box tonight, and the outlook of the next working day. */
export const evening: Post = {
  time: (settings) => settings.evening,
  wants: ['kit:'],
  speak: (on) => speakEvening(on, howOf(on.settings))
}

const everyDay = [1, 2, 3, 4, 5, 6, 7]

/** The evening post in a language and system of units. */
export function speakEvening(on: PostOn, how: How): Written {
  const { memory, forecast, sheet, settings, now } = on
  const text = texts[how.lang]
  const date = nextWorkday(on.date, settings.days)
  const roof = roofOfDay(memory, forecast, sheet, date, now)
  const day = outlook(memory, forecast, sheet, date, now, roof)
  const { noon } = dayMarks(date, settings.zone)
  const planned = plannedLines(on, day, noon, how, text)
  const kits = kitsOf(on, day, noon, how, text)
  const head = dayHead(on, day, how, text)
  const page = {
    head: date === nextWorkday(on.date, everyDay) ? text.posts.tomorrow(head) : text.posts.nextDay(head),
    lines: [
      ...alertLinesOf(on, date, noon, how, text),
      ...kits,
      ...(day.known ? aheadLines(on, day, planned, how, text) : [text.posts.noForecast, ...workLines(day, on, how, text)])
    ],
    details: day.known ? bindingLines(day, ['lay', 'weld'], how, text) : [],
    notes: [...dayCautions(day, text), ...sourceNotes(on, how, text)]
  }
  return {
    ...layOut(ledBy(page, bondFirst(failedBonds([memory.yesterday, memory.today]), text), text), how.lang),
    papers: day.known ? dayPaper({ ...on, roof }, day, how) : []
  }
}

/** Each kit that is logged; where none is, what the night does to any. */
function kitsOf(on: PostOn, day: Outlook, noon: Instant, how: How, text: Text): readonly string[] {
  const night = nightOf(on.forecast, on.sheet, on.now, noon)
  const own = kitsTonight(on, how, text)
  return [...(night.airC === null ? [] : kitLines({ ...day, airC: night.airC }, on.sheet, how, text)), ...own]
}

function aheadLines(on: PostOn, day: Outlook, planned: readonly string[], how: How, text: Text): readonly string[] {
  return [
    ...workLines(day, on, how, text),
    ...bindingLines(day, ['spray'], how, text),
    ...planned,
    ...weatherLines(day, how, text),
    ...hazardLines(day, how, text)
  ]
}
