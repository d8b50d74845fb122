import type { Draw, Paper, PaperKind } from '../../bot/papers/paper.js'
import { fileName } from '../../core/file-name.js'
import { toCsv } from './csv.js'
import { toPdf } from './pdf.js'
import { toZip } from './zip.js'

interface Sheet {
  readonly mime: string
  readonly bytes: Uint8Array
}

/** Every document and table: its data → bytes. Pictures inside are drawn by `draw`. A new one is a file and a line here. */
export const records = {
  record: async ({ data }: Paper<'record'>, draw: Draw): Promise<Sheet> => ({ mime: 'application/pdf', bytes: await toPdf(data, draw) }),
  table: ({ data }: Paper<'table'>): Sheet => ({ mime: 'text/csv', bytes: toCsv(data) }),
  packet: async ({ data }: Paper<'packet'>, draw: Draw): Promise<Sheet> => {
    const files: { readonly name: string; readonly bytes: Uint8Array }[] = []
    for (const paper of data.papers) files.push(await draw(paper))
    for (const raw of data.raw ?? [])
      files.push({ name: fileName(raw.name), bytes: 'text' in raw ? Buffer.from(raw.text) : Buffer.from(raw.base64, 'base64') })
    return { mime: 'application/zip', bytes: toZip(files, new Date(data.madeAt)) }
  }
} as const satisfies { readonly [K in PaperKind]?: (paper: Paper<K>, draw: Draw) => Sheet | Promise<Sheet> }
