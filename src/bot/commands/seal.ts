import { detailItems, type OpenItem, sealItems, whatIsOpen } from '../../core/closing/what-is-open.js'
import type { Finding } from '../../core/finding.js'
import type { Fix } from '../../core/fix.js'
import { localDate } from '../../core/instant.js'
import { type Closing, emptyClosing } from '../../core/log/states/closing.js'
import { rank, worst } from '../../core/outcome.js'
import type { FindingId } from '../answer.js'
import { check } from '../closing/check.js'
import { dayToClose } from '../closing/day-to-close.js'
import { openRows } from '../closing/open-rows.js'
import { type Done, type OnSite, told } from '../context.js'
import { photosWanted } from '../photos/wanted.js'
import type { Said } from '../words/said.js'

/** The night seal: open edge, how it is closed, drains, loose sheets; and all else that still stands open this evening. */
export async function seal({ seal: said }: Extract<Said, { command: 'seal' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  const date = localDate(at, session.settings.zone)
  if (Object.keys(said).length > 0) await session.log('seal', `day:${date}`, said, at)
  const day = await dayToClose(session, at)
  const closing = day.today.closing ?? emptyClosing
  // Who asks wants to know: here everything counts as needed.
  const items = sealItems(closing, true)
  const findings = checks.map(({ rule, what, fixes }) => findingOf(rule, items, what, fixes, at))
  const unchecked = day.today.laidAt === null ? [] : detailItems(day.site, true).filter(({ outcome }) => outcome === 'unknown')
  const open = [...whatIsOpen(day).items, ...unchecked]
  return told({
    command: 'seal',
    outcome: worst(findings.map(({ outcome }) => outcome)),
    findings: [...findings].sort((a, b) => rank[b.outcome] - rank[a.outcome]),
    numbers: {
      ...sealNumbers(closing),
      toCutM: day.yesterday?.closing?.seal.openEdgeM?.value ?? 0,
      open: openRows(open.filter(({ what }) => !checks.some((each) => each.what === what))),
      ...photosWanted(`day:${date}`, said.files)
    }
  })
}

const checks = [
  { rule: 'night-seal', what: 'seal', fixes: { wrong: 'seal:edge', missing: 'state:seal' } },
  { rule: 'drains-open', what: 'drains', fixes: { wrong: 'open:drains', missing: 'state:drains' } },
  { rule: 'sheets-safe', what: 'sheets', fixes: { wrong: 'roll:sheets', missing: 'state:rolled' } }
] as const satisfies readonly { rule: FindingId; what: OpenItem['what']; fixes: { wrong: Fix; missing: Fix } }[]

function findingOf(
  rule: FindingId,
  items: readonly OpenItem[],
  what: OpenItem['what'],
  fixes: { readonly wrong: Fix; readonly missing: Fix },
  at: number
): Finding<FindingId> {
  const item = items.find((each) => each.what === what)
  if (item === undefined) return check(rule, 'go', null, at)
  return check(rule, item.outcome, item.outcome === 'no-go' ? fixes.wrong : fixes.missing, at)
}

function sealNumbers({ seal, pictures }: Closing) {
  return {
    openEdgeM: seal.openEdgeM?.value ?? null,
    // Of no edge there is no way that it is closed.
    method: seal.openEdgeM?.value === 0 ? null : (seal.method?.value ?? null),
    drainsOpen: seal.drainsOpen?.value ?? null,
    sheetsSafe: seal.sheetsSafe?.value ?? null,
    cut: seal.cut?.value ?? false,
    wetM: seal.wetM?.value ?? null,
    by: seal.by?.value ?? null,
    photos: pictures.photos.length
  }
}
