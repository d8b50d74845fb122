/**
 * Most that an answer or a file of one may be. The longest of a service is some 400 KB, and a year of hours is 8,784: whatever is larger
 * is none, and would keep everybody waiting while it is read. Source: common practice, no source.
 */
export const mostBytes = 4 * 1024 * 1024
export const mostHours = 10_000

/** `4 MiB`, for messages. */
export const mostBytesText = `${mostBytes / 1024 / 1024} MiB`

/** The body of an answer as text (UTF-8); null where it is larger than `mostBytes`, and then no more of it is fetched. */
export async function boundedText(body: AsyncIterable<Uint8Array> | null): Promise<string | null> {
  const parts: Uint8Array[] = []
  let length = 0
  for await (const part of body ?? []) {
    length += part.length
    // Leaving the loop ends the download.
    if (length > mostBytes) return null
    parts.push(part)
  }
  return new TextDecoder().decode(Buffer.concat(parts))
}
