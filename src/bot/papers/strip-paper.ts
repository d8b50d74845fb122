import type { StripDrawing } from '../../core/sheets/strip-drawing.js'
import { stripAlt } from '../views/strip-alt.js'
import type { Paper } from './paper.js'

/** The drawing of one strip. */
export function stripPaper(drawing: StripDrawing): Paper<'strip'> {
  return { kind: 'strip', name: 'strip.png', alt: stripAlt(drawing), data: drawing }
}
