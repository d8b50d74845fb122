import type { Ports } from '../context.js'
import type { Reply } from '../reply.js'
import { texts } from '../text/index.js'
import { escapeText } from '../views/escape.js'
import { withNote } from '../views/page.js'
import type { DrawnFile, Paper } from './paper.js'

/** A reply and the files that go with it. */
export interface Replied {
  readonly reply: Reply
  readonly files: readonly DrawnFile[]
}

const nameMax = 120

/** Draws the files of a reply. One that cannot be drawn costs the answer nothing but that file, and the answer says so. */
export async function drawn(reply: Reply, papers: readonly Paper[], { draw, report }: Pick<Ports, 'draw' | 'report'>): Promise<Replied> {
  const files: DrawnFile[] = []
  const lost: { readonly name: string; readonly ref: string }[] = []
  for (const paper of papers) {
    try {
      files.push(await draw(paper))
    } catch (error) {
      lost.push({ name: paper.name, ref: report(error, { site: reply.site ?? '', paper: paper.kind }) })
    }
  }
  const said = lost.length === 0 ? reply : { ...reply, ...withNote(reply, notDrawn(lost, reply), reply.lang) }
  return { reply: { ...said, files: files.map(({ kind, name, sha256, alt }) => ({ kind, name, sha256, alt })) }, files }
}

function notDrawn(lost: readonly { readonly name: string; readonly ref: string }[], { lang }: Reply): string {
  const names = lost.map(({ name }) => escapeText(name, nameMax)).join(', ')
  return texts[lang].frame.notDrawn(names, [...new Set(lost.map(({ ref }) => ref))].join(', '))
}
