import type { PhotoData } from '../../core/log/closing-data.js'
import type { Kind } from '../../core/log/fold.js'
import { lookAtPhoto, type PhotoProblem } from '../../core/photo.js'
import type { Ask } from '../ask.js'
import type { Ports } from '../context.js'
import type { SiteView } from '../ports.js'
import { openSession } from '../session/session.js'
import type { FetchedPhoto } from './fetched.js'
import type { WantedPhoto } from './wanted.js'

/** What became of a photo: the id of its entry, or why it was not kept. */
export type PhotoKept =
  | { readonly kind: 'kept'; readonly id: string }
  | { readonly kind: 'refused'; readonly why: PhotoProblem | 'away' | 'not-found' | 'gone' }

/**
 * Keeps a photo beside what it shows: its own entry, its bytes once by their hash. The same file comes a second time to no effect.
 * What it shows may have been undone meanwhile: then it is not kept.
 */
export async function keepPhoto(ask: Ask, { site, subject, file }: WantedPhoto, fetched: FetchedPhoto, { store }: Ports): Promise<PhotoKept> {
  if (fetched.kind === 'failed') return { kind: 'refused', why: fetched.why }
  const { bytes, base64, sha256 } = fetched
  const looked = lookAtPhoto(bytes)
  if (!looked.ok) return { kind: 'refused', why: looked.problem }
  const { mime, widthPx, heightPx } = looked
  const data: PhotoData = { sha256, mime, widthPx, heightPx, bytes: bytes.length, file }
  const claim = { key: `photo:${site}:${subject}:${file}` }
  const appended = await store.append<PhotoKept>({ workspace: ask.workspace, site }, ask.at, claim, async (view) => {
    const session = await openSession(ask, view)
    if (!(await isThere(view, subject))) return { drafts: [], moved: [], keepsakes: [], posts: [], reply: { kind: 'refused', why: 'gone' } }
    const id = await session.log('photo', subject, data)
    session.keep({ sha256, kind: 'photo', body: () => base64 })
    return session.batch({ kind: 'kept', id })
  })
  return appended?.reply ?? { kind: 'refused', why: 'gone' }
}

const lasting: ReadonlySet<string> = new Set(['day'] satisfies Kind[])

/** A day is always there; a void or an item may have been undone. */
async function isThere(view: SiteView, subject: string): Promise<boolean> {
  if (lasting.has(subject.split(':')[0] as string)) return true
  const state = (await view.state(subject))?.state as { is: unknown } | null | undefined
  return state?.is != null
}
