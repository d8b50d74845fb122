import { alerts } from './fr/alerts.js'
import { asked } from './fr/asked.js'
import { begin } from './fr/begin.js'
import { closing } from './fr/closing.js'
import { day } from './fr/day.js'
import { dayPicture } from './fr/day-picture.js'
import { decision } from './fr/decision.js'
import { exportWords } from './fr/export.js'
import { facts } from './fr/facts.js'
import { findings } from './fr/findings.js'
import { first } from './fr/first.js'
import { fixes } from './fr/fixes.js'
import { frame } from './fr/frame.js'
import { guide } from './fr/guide.js'
import { hints } from './fr/hints.js'
import { home } from './fr/home.js'
import { install } from './fr/install.js'
import { labels } from './fr/labels.js'
import { parts } from './fr/parts.js'
import { posts } from './fr/posts.js'
import { record } from './fr/record.js'
import { refusal } from './fr/refusal.js'
import { replay } from './fr/replay.js'
import { roofPicture } from './fr/roof-picture.js'
import { run } from './fr/run.js'
import { sheets } from './fr/sheets.js'
import { takeoff } from './fr/takeoff.js'
import { talk } from './fr/talk.js'
import { toSay } from './fr/to-say.js'
import { usages } from './fr/usages.js'
import { warming } from './fr/warming.js'
import { weld } from './fr/weld.js'
import { widths } from './fr/widths.js'
import { yields } from './fr/yield.js'
import type { Text } from './text.js'

export const fr: Text = {
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
