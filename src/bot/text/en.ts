import { alerts } from './en/alerts.js'
import { asked } from './en/asked.js'
import { begin } from './en/begin.js'
import { closing } from './en/closing.js'
import { day } from './en/day.js'
import { dayPicture } from './en/day-picture.js'
import { decision } from './en/decision.js'
import { exportWords } from './en/export.js'
import { facts } from './en/facts.js'
import { findings } from './en/findings.js'
import { first } from './en/first.js'
import { fixes } from './en/fixes.js'
import { frame } from './en/frame.js'
import { guide } from './en/guide.js'
import { hints } from './en/hints.js'
import { home } from './en/home.js'
import { install } from './en/install.js'
import { labels } from './en/labels.js'
import { parts } from './en/parts.js'
import { posts } from './en/posts.js'
import { record } from './en/record.js'
import { refusal } from './en/refusal.js'
import { replay } from './en/replay.js'
import { roofPicture } from './en/roof-picture.js'
import { run } from './en/run.js'
import { sheets } from './en/sheets.js'
import { takeoff } from './en/takeoff.js'
import { talk } from './en/talk.js'
import { toSay } from './en/to-say.js'
import { warming } from './en/warming.js'
import { weld } from './en/weld.js'
import { widths } from './en/widths.js'
import { yields } from './en/yield.js'
import type { Text } from './text.js'
import { usages } from './usages.js'

export const en: Text = {
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
