import type { DayChart } from '../../core/plan/day-chart.js'
import type { RoofDrawing } from '../../core/sheets/roof-drawing.js'
import type { StripDrawing } from '../../core/sheets/strip-drawing.js'
import type { WidthsChart } from '../../core/welds/widths-chart.js'
import type { DocumentData, PacketData, TableData } from './document.js'

/**
 * What each kind of file shows, as data: the bot has no pen, an adapter draws it. A new kind is a line here and a drawer in its
 * adapter's map; one without a drawer does not compile.
 */
export interface PaperData {
  readonly day: DayChart
  readonly widths: WidthsChart
  readonly record: DocumentData<Paper>
  readonly table: TableData
  readonly packet: PacketData<Paper>
  readonly roof: RoofDrawing
  /** The same drawing to be changed by others: SVG. */
  readonly 'roof-svg': RoofDrawing
  readonly strip: StripDrawing
}

export type PaperKind = keyof PaperData

/** A file to be drawn: a picture, a table, a document. `alt` says in words what it shows, below 2,000 characters. */
export interface Paper<K extends PaperKind = PaperKind> {
  readonly kind: K
  /** Name of the file, with its ending. */
  readonly name: string
  readonly alt: string
  readonly data: PaperData[K]
}

/** A drawn file. */
export interface DrawnFile {
  readonly kind: string
  readonly name: string
  readonly alt: string
  readonly mime: string
  /** SHA-256 of the bytes, lower-case hex. */
  readonly sha256: string
  readonly bytes: Uint8Array
}

/** Draws one file. The same data gives the same bytes. */
export type Draw = (paper: Paper) => Promise<DrawnFile>
