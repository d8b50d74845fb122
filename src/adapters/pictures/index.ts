import type { Paper, PaperKind } from '../../bot/papers/paper.js'
import { drawDay } from './day.js'
import { toPng } from './png.js'
import { drawRoof } from './roof.js'
import { drawStrip } from './strip.js'
import { drawWidths } from './widths.js'

/** What one drawer makes of the data of its kind. */
export interface Sheet {
  readonly mime: string
  readonly bytes: Uint8Array
}

/** Every picture: its data → bytes. A new one is a file and a line here. */
export const pictures = {
  day: ({ data }: Paper<'day'>) => png(drawDay(data)),
  'roof-svg': ({ data }: Paper<'roof-svg'>) => ({ mime: 'image/svg+xml', bytes: new TextEncoder().encode(drawRoof(data)) }),
  roof: ({ data }: Paper<'roof'>) => png(drawRoof(data)),
  strip: ({ data }: Paper<'strip'>) => png(drawStrip(data)),
  widths: ({ data }: Paper<'widths'>) => png(drawWidths(data))
} as const satisfies { readonly [K in PaperKind]?: (paper: Paper<K>) => Sheet }

function png(svg: string): Sheet {
  return { mime: 'image/png', bytes: toPng(svg) }
}
