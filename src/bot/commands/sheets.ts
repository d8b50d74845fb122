import type { LimitsSheet } from '../../core/limits/sheet.js'
import { layOut } from '../../core/sheets/lay-out.js'
import type { SheetSizes } from '../../core/sheets/layout.js'
import { mostSheets, notchedRectangle, outlineOf, outlineProblem, rectangleSize, sheetsAbout } from '../../core/sheets/outline.js'
import { boxOf, type Polygon } from '../../core/sheets/polygon.js'
import { sizesOf, sizesProblem } from '../../core/sheets/sizes.js'
import { takeoff } from '../../core/sheets/takeoff.js'
import { windZones, type ZoneAnswer } from '../../core/sheets/zones/index.js'
import type { SiteSettings } from '../../core/site.js'
import { type Beside, type Done, refuse, told } from '../context.js'
import { nothingOnRoof, type OnRoof, onRoof } from '../decision/on-roof.js'
import { refuseOutline, refuseSizes } from '../decision/refuse-outline.js'
import { sheetsNumbers } from '../decision/sheets-numbers.js'
import { roofPapers } from '../papers/roof-papers.js'
import type { OutlineSaid, Said, SheetsSaid } from '../words/said.js'

/** Lays sheets on the roof that was said, or on the site's, and says what it takes. Logs nothing. */
export async function sheets({ sheets: said }: Extract<Said, { command: 'sheets' }>, beside: Beside): Promise<Done> {
  const { sheet, place } = beside
  const roof = place?.settings.roof ?? null
  const given = said.outline ?? beside.ask.outline ?? null
  const outlineSaid = given ?? siteOutline(roof)
  if (outlineSaid === null) return refuse('missing', 'outline', { label: 'outline' })
  const rings = [outlineSaid.outer, ...outlineSaid.openings].map((corners) => corners.map(({ at }) => at))
  const [outer = [], ...openings] = rings
  const problem = outlineProblem({ outer, holes: openings })
  if (problem !== null) return refuseOutline(problem, outlineSaid)
  const sizes = saidSizes(said, sheet)
  const wrongSize = sizesProblem(sizes)
  if (wrongSize !== null) return refuseSizes(wrongSize)
  const outline = outlineOf(outer, openings)
  const word = outlineSaid.outer[0]?.word ?? null
  if (sheetsAbout(outline, sizes) > mostSheets) return refuse('out-of-range', word, { label: 'sheets', max: mostSheets, state: 'too-large' })
  const layout = layOut(outline, sizes, said.along)
  if (layout === null) return refuse('inconsistent', word, { label: 'sheet', state: 'sheet-wide' })
  const zones = zonesOf(said, outline, said.heightM ?? roof?.heightM ?? null)
  const take = takeoff(layout, zones, sheet)
  const on = given === null || roof === null || sameSize(outline, roof) ? await whatIsOn(beside) : nothingOnRoof
  const known = { site: place?.name ?? 'roof', invented: place?.settings.invented ?? false, now: beside.ask.at }
  const papers = roofPapers({ ...known, layout, zones, takeoff: take, ...on }, beside.how)
  return told({ command: 'sheets', numbers: sheetsNumbers(layout, zones, take, on.laidM2), papers })
}

/** Voids and metres of the site, where the roof that was said may be its own. */
async function whatIsOn({ ports, ask, place }: Beside): Promise<OnRoof> {
  return place === null ? nothingOnRoof : onRoof(ports.store, ask.workspace, place.name)
}

function sameSize(outline: Polygon, roof: NonNullable<SiteSettings['roof']>): boolean {
  const { minX, minY, maxX, maxY } = boxOf(outline.outer)
  return Math.abs(maxX - minX - roof.widthM * 1000) < 1 && Math.abs(maxY - minY - roof.depthM * 1000) < 1
}

function siteOutline(roof: SiteSettings['roof']): OutlineSaid | null {
  if (roof === null) return null
  const corners = notchedRectangle(roof.widthM * 1000, roof.depthM * 1000, [])
  return { outer: corners.map((at) => ({ at, word: `${roof.widthM}x${roof.depthM} m` })), openings: [] }
}

function saidSizes({ widthM, lapMm, rollM }: SheetsSaid, sheet: LimitsSheet): SheetSizes {
  const own = sizesOf(sheet)
  return {
    ...own,
    widthMm: widthM === null ? own.widthMm : widthM * 1000,
    lapMm: lapMm ?? own.lapMm,
    rollMm: rollM === null ? own.rollMm : rollM * 1000
  }
}

function zonesOf({ zones }: SheetsSaid, outline: Polygon, heightM: number | null): ZoneAnswer | null {
  if (zones === null) return null
  const size = rectangleSize(outline)
  return windZones(zones, size === null ? null : { widthM: size.widthMm / 1000, depthM: size.depthMm / 1000 }, heightM)
}
