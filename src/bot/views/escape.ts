const longest = 80

/**
 * Text of a person, made fit to stand inside a line of a message: one line, at most 80 characters, unable to ping
 * (`&`, `<`, `>` become entities), to link (`://` is parted) or to format (`*`, `~`, a backtick and an `_` at the edge of a word become
 * look-alikes: chat markup has no escape for them). Controls, invisible and direction-changing characters are dropped.
 */
export function escapeText(text: string, max: number = longest): string {
  const plain = text
    .replace(/\s+/gu, ' ')
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu, '')
    .trim()
  return withEntities(
    clip(plain, max)
      .replace(/:\/\//g, ': //')
      .replace(/\*/g, '∗')
      .replace(/~/g, '∼')
      .replace(/`/g, 'ˋ')
      .replace(/(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, 'ˍ')
  )
}

/** Text as typed, unable to ping: the chat service takes three characters for markup, and wants them as entities. */
export function withEntities(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')
}

/** The same where nothing reads markup (a header, a terminal): entities are turned back. */
export function withoutEntities(text: string): string {
  return text.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&amp;/g, '&')
}

/** Cuts after so many characters (code points), and shows that it did. */
export function clip(text: string, max: number): string {
  const points = [...text]
  return points.length <= max ? text : `${points.slice(0, max - 1).join('')}…`
}
