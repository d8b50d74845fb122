import type { DrawnFile } from '../../bot/papers/paper.js'
import type { Clients } from './clients.js'

/** Where files are shared; null: nowhere yet, for a message that will show them. */
export type Shelf = { readonly channel: string; readonly thread: string | null } | null

/** Uploads files, in three calls of the service; their ids, in order. Throws what the service's client throws. */
export async function upload({ posts }: Pick<Clients, 'posts'>, shelf: Shelf, files: readonly DrawnFile[]): Promise<readonly string[]> {
  const answer = await posts.filesUploadV2({
    ...(shelf === null ? {} : { channel_id: shelf.channel, ...(shelf.thread === null ? {} : { thread_ts: shelf.thread }) }),
    file_uploads: files.map(({ bytes, name, alt }) => ({ file: Buffer.from(bytes), filename: name, title: name, alt_text: shortened(alt) }))
  } as Parameters<typeof posts.filesUploadV2>[0])
  const done = (answer as unknown as { files?: readonly { files?: readonly { id?: string }[] }[] }).files ?? []
  return done.flatMap((each) => each.files ?? []).flatMap(({ id }) => id ?? [])
}

/** The service takes 1,000 characters with a file. */
const mostAlt = 1000

function shortened(alt: string): string {
  return alt.length <= mostAlt ? alt : `${alt.slice(0, mostAlt - 1)}…`
}
