import serialize from 'canonicalize'

/** RFC 8785 canonical JSON. Throws a TypeError for what is not JSON (undefined, NaN, infinite numbers, functions). */
export function canonical(value: unknown): string {
  const text = (serialize as unknown as (input: unknown) => string | undefined)(value)
  if (text === undefined) throw new TypeError('not JSON: cannot be made canonical')
  return text
}
