import { byBinding } from '../../core/decide.js'
import { certain } from '../../core/fact.js'
import type { Finding } from '../../core/finding.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import { worst } from '../../core/outcome.js'
import { judge } from '../../core/rules/judge.js'
import { stripSize } from '../../core/sheets/strip.js'
import { leastMm, seamLimit } from '../../core/welds/seam-limit.js'
import { type Beside, type Done, refuse, told } from '../context.js'
import { stripPaper } from '../papers/strip-paper.js'
import type { Said, StripSaid } from '../words/said.js'

/** Size of a cover strip. Logs nothing. */
export async function strip(
  { strip: said }: Extract<Said, { command: 'strip' }>,
  { sheet, ask, how }: Pick<Beside, 'sheet' | 'ask' | 'how'>
): Promise<Done> {
  const gapMm = said.gapMm ?? sheet.sheet.endGapMm
  if (sheet.sheet.lapMm >= said.widthM * 1000) return refuse('inconsistent', null, { label: 'width', min: sheet.sheet.lapMm, unit: 'mm' })
  const input = {
    widthM: said.widthM,
    sheets: said.sheets ?? 1,
    gapMm,
    offMm: said.offMm ?? 0,
    edgeMm: said.edgeMm,
    lapMm: sheet.sheet.lapMm,
    pastLapMm: sheet.strip.pastLapMm,
    stripWidthMm: sheet.strip.widthMm,
    cornerRadiusMm: sheet.strip.cornerRadiusMm
  }
  const size = stripSize(input)
  if (size === null) return refuse('inconsistent', null, { label: 'strip' })
  const minWidthMm = leastMm(seamLimit(null, sheet))
  const findings = [landFinding(size.landMm, ask.at, sheet), gapFinding(gapMm, ask.at, sheet)].sort(byBinding)
  const numbers = { ...size, minWidthMm, ...fromRoll(said, size.lengthMm), ...perRoll(said.rollM ?? sheet.sheet.rollM, size.lengthMm) }
  // A chat shows the picture; a terminal asks thousands of sizes, and drawing is what takes long.
  const drawn = said.picture === true || ask.via !== 'ask'
  const papers = !drawn ? [] : [stripPaper({ strip: input, size, minWidthMm, lang: how.lang, units: how.units })]
  return told({ command: 'strip', outcome: worst(findings.map(({ outcome }) => outcome)), findings, numbers, papers })
}

/** How many a bare-back roll gives, or how many were asked for; with both also the rolls that takes. */
function fromRoll({ rollM, times }: StripSaid, lengthMm: number): { count: number; rolls: number | null } {
  if (rollM === null) return { count: times ?? 1, rolls: null }
  const count = countIn(rollM, lengthMm)
  return { count, rolls: times === null || count === 0 ? null : Math.ceil(times / count) }
}

/** Of the roll that was said, else one as long as those of sheets. */
function perRoll(rollM: number, lengthMm: number): { rollM: number; perRoll: number } {
  return { rollM, perRoll: countIn(rollM, lengthMm) }
}

function countIn(rollM: number, lengthMm: number): number {
  return Math.floor((rollM * 1000) / lengthMm + 1e-9)
}

function landFinding(landMm: number, at: number, sheet: LimitsSheet): Finding<'strip-land'> {
  const verdict = judge(certain(landMm, at, 'statement'), 'mm', seamLimit(null, sheet), {
    read: 'widen:strip',
    low: 'widen:strip',
    high: 'widen:strip'
  })
  return { rule: 'strip-land', activity: 'weld', group: 'conditions', ...verdict }
}

function gapFinding(gapMm: number, at: number, sheet: LimitsSheet): Finding<'strip-gap'> {
  const verdict = judge(certain(gapMm, at, 'statement'), 'mm', sheet.limits.stripGap, { read: 'trim:gap', low: 'trim:gap', high: 'trim:gap' })
  return { rule: 'strip-gap', activity: 'weld', group: 'conditions', ...verdict }
}
