/** Case and accents away, one kind of apostrophe: how words are compared. */
export function fold(word: string): string {
  const lower = word.toLowerCase()
  if (/^[a-z0-9' -]*$/.test(lower)) return lower
  return lower
    .replace(/[’‘ʼ]/g, "'")
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .replace(/œ/g, 'oe')
    .replace(/æ/g, 'ae')
}

/** At most `max` characters of a word, never half of one: what a refusal repeats. */
export function short(word: string, max = 60): string {
  return Array.from(word.slice(0, 2 * max))
    .slice(0, max)
    .join('')
}
