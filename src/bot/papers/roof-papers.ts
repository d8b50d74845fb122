import { type Instant, toIso } from '../../core/instant.js'
import type { Layout } from '../../core/sheets/layout.js'
import { type OpenVoid, placedVoid, type RoofDrawing } from '../../core/sheets/roof-drawing.js'
import type { Takeoff } from '../../core/sheets/takeoff.js'
import type { ZoneAnswer } from '../../core/sheets/zones/index.js'
import { texts } from '../text/index.js'
import type { How } from '../views/how.js'
import { roofAlt, roofLine } from '../views/roof-alt.js'
import type { DocumentData } from './document.js'
import type { Paper } from './paper.js'
import { type TakeoffOn, takeoffParts, takeoffTable } from './takeoff-paper.js'

/** A roof laid out, with what is known of it. */
export interface RoofOn {
  readonly site: string
  readonly invented: boolean
  readonly now: Instant
  readonly layout: Layout
  readonly zones: ZoneAnswer | null
  readonly takeoff: Takeoff
  /** Not those that were repaired and passed. */
  readonly voids: readonly OpenVoid[]
  /** Logged as laid so far, m². */
  readonly laidM2: number
}

/** The files of a roof: its drawing for a phone, the same as SVG, a document with plan and takeoff, and the takeoff as a table. */
export function roofPapers(roof: RoofOn, how: How): readonly Paper[] {
  const { site, layout, takeoff, laidM2 } = roof
  const text = texts[how.lang]
  const drawing = drawingOf(roof, how)
  const onPaper: RoofDrawing = { ...drawing, use: 'paper' }
  const alt = roofAlt(drawing)
  const on: TakeoffOn = { takeoff, roofM2: layout.areaMm2 / 1e6, laidM2 }
  const title = text.takeoff.title(site)
  return [
    { kind: 'roof', name: `${site}-roof.png`, alt, data: drawing },
    { kind: 'roof-svg', name: `${site}-roof.svg`, alt, data: onPaper },
    { kind: 'record', name: `${site}-roof.pdf`, alt: title, data: documentOf(roof, onPaper, on, how) },
    { kind: 'table', name: `${site}-takeoff.csv`, alt: title, data: takeoffTable(on, how, text) }
  ]
}

function drawingOf({ site, invented, layout, zones, voids }: RoofOn, { lang, units }: How): RoofDrawing {
  const placed = voids.flatMap((each) => placedVoid(each, layout) ?? [])
  return { site, invented, layout, zones, voids: placed, use: 'phone', lang, units }
}

function documentOf({ site, invented, now }: RoofOn, drawing: RoofDrawing, on: TakeoffOn, how: How): DocumentData<Paper> {
  const text = texts[how.lang]
  return {
    lang: how.lang,
    title: text.roofPicture.title(site),
    subtitle: roofLine(drawing, text),
    labels: invented ? [text.frame.invented] : [],
    parts: [
      { kind: 'picture', title: null, words: null, paper: { kind: 'roof-svg', name: `${site}-plan.svg`, alt: roofAlt(drawing), data: drawing } },
      ...takeoffParts(on, how, text)
    ],
    foot: `${text.takeoff.title(site)} · ${toIso(now)}`,
    pageWords: text.takeoff.page,
    madeAt: toIso(now)
  }
}
