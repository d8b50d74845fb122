/**
 * RFC 8785 canonical JSON: members in order of UTF-16 code units, numbers and strings as ECMAScript writes them. Members that are
 * undefined are left out. Throws a TypeError for what is not JSON (undefined, NaN, infinite numbers, functions). Written out here,
 * because an answer waits for it: the tests hold it against the reference implementation.
 */
export function canonical(value: unknown): string {
  if (value === null) return 'null'
  if (typeof value === 'string') return quoted(value)
  if (typeof value === 'number') return number(value)
  if (typeof value === 'boolean') return value ? 'true' : 'false'
  if (typeof value !== 'object') throw new TypeError(`not JSON: cannot be made canonical: ${typeof value}`)
  return Array.isArray(value) ? list(value) : members(value as Readonly<Record<string, unknown>>)
}

function list(values: readonly unknown[]): string {
  let text = '['
  for (let index = 0; index < values.length; index += 1) text += (index === 0 ? '' : ',') + canonical(values[index] ?? null)
  return `${text}]`
}

function members(value: Readonly<Record<string, unknown>>): string {
  let text = '{'
  for (const name of inOrder(Object.keys(value))) {
    const member = value[name]
    if (member !== undefined) text += (text === '{' ? '' : ',') + named(name) + canonical(member)
  }
  return `${text}}`
}

/** Sorts names by UTF-16 code units, where they are not in order already. */
function inOrder(names: string[]): readonly string[] {
  for (let index = 1; index < names.length; index += 1) if ((names[index - 1] as string) > (names[index] as string)) return names.sort()
  return names
}

function number(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError('not JSON: a number that is not finite')
  return String(value)
}

/** Nothing in these has to be escaped. */
const plain = /^[ !#-[\]-~]*$/

function quoted(text: string): string {
  return plain.test(text) ? `"${text}"` : JSON.stringify(text)
}

/** Names come again and again. */
const names = new Map<string, string>()
const mostNames = 1000

function named(name: string): string {
  const known = names.get(name)
  if (known !== undefined) return known
  const text = `${quoted(name)}:`
  if (names.size < mostNames) names.set(name, text)
  return text
}
