/** Names that a file cannot have on one widespread system, whatever follows the first dot. Source: from memory. */
const devices = /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i
const longest = 100

/**
 * A name as one that is never a path, on any system: letters, digits, `-`, `_` and single dots inside, at most 100 characters, with the
 * ending that it has. Look-alikes of dots and slashes are taken for what they look like. What we name ourselves stays as it is.
 */
export function fileName(name: string): string {
  const plain = (name.length > 2 * longest ? name.slice(0, longest) + name.slice(-longest) : name)
    .normalize('NFKC')
    .replace(/[^A-Za-z0-9._-]/g, '-')
    .replace(/\.{2,}/g, '.')
    .replace(/^[.-]+/, '')
  const ending = /\.[A-Za-z0-9]{1,8}$/.exec(plain)?.[0] ?? ''
  const stem = plain.slice(0, Math.min(plain.length - ending.length, longest - ending.length))
  const whole = `${/[A-Za-z0-9]/.test(stem) ? stem : 'file'}${ending}`
  return devices.test(whole) ? `_${whole}` : whole
}
