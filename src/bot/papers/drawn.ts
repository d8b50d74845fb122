import type { Ports } from '../context.js'
import type { Reply } from '../reply.js'
import type { DrawnFile, Paper } from './paper.js'

/** A reply and the files that go with it. */
export interface Replied {
  readonly reply: Reply
  readonly files: readonly DrawnFile[]
}

/** Draws the files of a reply. One that cannot be drawn is a bug, and costs the answer nothing but that file. */
export async function drawn(reply: Reply, papers: readonly Paper[], { draw, report }: Pick<Ports, 'draw' | 'report'>): Promise<Replied> {
  const files: DrawnFile[] = []
  for (const paper of papers) {
    try {
      files.push(await draw(paper))
    } catch (error) {
      report(error, { site: reply.site ?? '', paper: paper.kind })
    }
  }
  return { reply: { ...reply, files: files.map(({ kind, name, sha256, alt }) => ({ kind, name, sha256, alt })) }, files }
}
