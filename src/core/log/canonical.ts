import serialize from 'canonicalize'

/** RFC 8785 canonical JSON. Throws a TypeError for what is not JSON (undefined, NaN, infinite numbers, functions). */
export function canonical(value: unknown): string {
  const text = (serialize as unknown as (input: unknown) => string | undefined)(finite(value))
  if (text === undefined) throw new TypeError('not JSON: cannot be made canonical')
  return text
}

/** The package throws a plain Error for these, which could be taken for the outside failing. */
function finite(value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError('not JSON: a number that is not finite')
  if (typeof value === 'object' && value !== null) Object.values(value).forEach(finite)
  return value
}
