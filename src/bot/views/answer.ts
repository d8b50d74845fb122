import type { Answer, Spoken } from '../answer.js'
import { texts } from '../text/index.js'
import { type CommandName, isCommandName } from '../text/usages.js'
import { askedFirst } from './asked.js'
import { roleView, startView } from './begin.js'
import { bondView } from './bond.js'
import { couponView } from './coupon.js'
import { dayView } from './day.js'
import { dayRecordView, dayStartView } from './day-record.js'
import { airView, sprayView, weldView } from './decision.js'
import { detailView } from './detail.js'
import { fireView } from './fire.js'
import { foamView } from './foam.js'
import { helpView } from './help.js'
import type { How } from './how.js'
import { kitView } from './kit.js'
import { laidView } from './laid.js'
import { layOut } from './page.js'
import { correctView, meView, undoView } from './person.js'
import { probeView } from './probe.js'
import { punchView } from './punch.js'
import { sealView } from './seal.js'
import { sheetsView } from './sheets.js'
import { siteView } from './site.js'
import { stripView } from './strip.js'
import { pageOf, type View } from './view.js'

/** Every command has its view: one that lacks it does not compile. */
const views: Readonly<Record<CommandName, View>> = {
  spray: sprayView,
  air: airView,
  weld: (answer, how, text) => ('passed' in answer.numbers ? couponView : weldView)(answer, how, text),
  strip: stripView,
  sheets: sheetsView,
  probe: probeView,
  kit: kitView,
  foam: foamView,
  laid: laidView,
  bond: bondView,
  seal: sealView,
  fire: fireView,
  detail: detailView,
  punch: punchView,
  day: (answer, how, text) => dayViewOf(answer)(answer, how, text),
  site: siteView,
  start: startView,
  role: roleView,
  help: helpView,
  me: meView,
  undo: undoView,
  correct: correctView
}

/** Of a day there are its hours, its record and its start. */
function dayViewOf({ numbers }: Answer): View {
  if ('record' in numbers) return dayRecordView
  return 'start' in numbers ? dayStartView : dayView
}

/** An answer in a person's language and units: text and blocks that say the same. Pure: the same answer gives the same bytes. */
export function speak(answer: Answer, how: How): Spoken {
  const text = texts[how.lang]
  if (isCommandName(answer.command)) return layOut(askedFirst(views[answer.command](answer, how, text), answer, how, text), how.lang)
  return layOut(pageOf(answer, { about: answer.command, lines: [] }, how, text), how.lang)
}
