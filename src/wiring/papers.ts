import { createHash } from 'node:crypto'
import type { Draw, Paper, PaperKind } from '../bot/papers/paper.js'

/** Every kind of file has its drawer: a missing one does not compile. Loaded when the first file is drawn, not at the start. */
async function drawers() {
  const { pictures } = await import('../adapters/pictures/index.js')
  return pictures satisfies { readonly [K in PaperKind]: (paper: Paper<K>) => unknown }
}

export const draw: Draw = async (paper) => {
  const all = await drawers()
  const run = all[paper.kind] as (paper: Paper) => Awaited<ReturnType<(typeof all)[PaperKind]>>
  const { mime, bytes } = await run(paper)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  return { kind: paper.kind, name: paper.name, alt: paper.alt, mime, sha256, bytes }
}
