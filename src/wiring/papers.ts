import { createHash } from 'node:crypto'
import type { Draw, Paper, PaperKind } from '../bot/papers/paper.js'
import { fileName } from '../core/file-name.js'

type Drawer<K extends PaperKind> = (paper: Paper<K>, draw: Draw) => Made | Promise<Made>

interface Made {
  readonly mime: string
  readonly bytes: Uint8Array
}

/** Every kind of file has its drawer: a missing one does not compile. What is heavy is loaded when it is first needed. */
const drawers: { readonly [K in PaperKind]: () => Promise<Drawer<K>> } = {
  day: async () => (await pictures()).day,
  'roof-svg': async () => (await pictures())['roof-svg'],
  roof: async () => (await pictures()).roof,
  strip: async () => (await pictures()).strip,
  widths: async () => (await pictures()).widths,
  record: async () => (await records()).record,
  table: async () => (await records()).table,
  packet: async () => (await records()).packet
}

async function pictures() {
  return (await import('../adapters/pictures/index.js')).pictures
}

async function records() {
  return (await import('../adapters/record/index.js')).records
}

/** Whatever a store came with, as the name of a site or of a day: what leaves has a name that is never a path. */
export const draw: Draw = async (paper) => {
  const run = (await drawers[paper.kind]()) as Drawer<PaperKind>
  const { mime, bytes } = await run(paper, draw)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  return { kind: paper.kind, name: fileName(paper.name), alt: paper.alt, mime, sha256, bytes }
}
