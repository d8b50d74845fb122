import { alerts } from './es/alerts.js'
import { asked } from './es/asked.js'
import { begin } from './es/begin.js'
import { closing } from './es/closing.js'
import { day } from './es/day.js'
import { dayPicture } from './es/day-picture.js'
import { decision } from './es/decision.js'
import { exportWords } from './es/export.js'
import { facts } from './es/facts.js'
import { findings } from './es/findings.js'
import { first } from './es/first.js'
import { fixes } from './es/fixes.js'
import { frame } from './es/frame.js'
import { guide } from './es/guide.js'
import { hints } from './es/hints.js'
import { home } from './es/home.js'
import { install } from './es/install.js'
import { labels } from './es/labels.js'
import { parts } from './es/parts.js'
import { posts } from './es/posts.js'
import { record } from './es/record.js'
import { refusal } from './es/refusal.js'
import { replay } from './es/replay.js'
import { roofPicture } from './es/roof-picture.js'
import { run } from './es/run.js'
import { sheets } from './es/sheets.js'
import { takeoff } from './es/takeoff.js'
import { talk } from './es/talk.js'
import { toSay } from './es/to-say.js'
import { usages } from './es/usages.js'
import { warming } from './es/warming.js'
import { weld } from './es/weld.js'
import { widths } from './es/widths.js'
import { yields } from './es/yield.js'
import type { Text } from './text.js'

export const es: Text = {
  ...frame,
  ...decision,
  ...parts,
  ...posts,
  alerts,
  asked,
  day,
  dayPicture,
  begin,
  closing,
  first,
  exportWords,
  facts,
  findings: { ...findings, ...closing.findings },
  fixes: { ...fixes, ...closing.fixes },
  labels: { ...labels, ...closing.labels },
  refusal: { ...refusal, states: { ...refusal.states, ...closing.states, 'last-supervisor': begin.lastSupervisor } },
  roofPicture,
  sheets,
  takeoff,
  record,
  replay,
  talk,
  toSay: { ...toSay, ...closing.toSay },
  usages,
  guide,
  hints,
  home,
  install,
  run,
  warming,
  yields,
  weld,
  widths
}
