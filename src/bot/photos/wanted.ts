import type { Json } from '../../core/log/entry.js'
import type { Reply } from '../reply.js'
import { row, str, strings } from '../views/read.js'

/** A photo that a message named and whose bytes are still at the chat service. */
export interface WantedPhoto {
  readonly site: string
  /** What it shows: `void:3`, `punch:2`, `day:2026-05-04`. */
  readonly subject: string
  readonly file: string
}

/** For the numbers of an answer: photos that are fetched once the reply has left. Nothing for none. */
export function photosWanted(subject: string, files: readonly string[] | undefined): { readonly photosWanted?: Json } {
  return files === undefined || files.length === 0 ? {} : { photosWanted: { subject, files: [...files] } }
}

/** What a reply says of photos to fetch; none where nothing was logged. */
export function wantedIn({ ok, site, numbers }: Pick<Reply, 'ok' | 'site' | 'numbers'>): readonly WantedPhoto[] {
  const asked = row({ numbers }, 'numbers')
  const wanted = asked === null ? null : row(asked, 'photosWanted')
  const subject = wanted === null ? null : str(wanted, 'subject')
  if (!ok || site === null || wanted === null || subject === null) return []
  return strings(wanted, 'files').map((file) => ({ site, subject, file }))
}
