/** A payload as it came: nothing of it is believed before it is read. */
export type Loose = Readonly<Record<string, unknown>>

export function isLoose(value: unknown): value is Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** What stands at a path of a payload; undefined when any part of the path is missing. */
export function at(value: unknown, ...path: readonly (string | number)[]): unknown {
  let found = value
  for (const key of path) {
    if (typeof key === 'number') found = Array.isArray(found) ? found[key] : undefined
    else found = isLoose(found) && Object.hasOwn(found, key) ? found[key] : undefined
  }
  return found
}

/** A text that is not empty, at a path; null for anything else. */
export function textAt(value: unknown, ...path: readonly (string | number)[]): string | null {
  const found = at(value, ...path)
  return typeof found === 'string' && found !== '' ? found : null
}

/** A JSON object in a text; null for anything else. */
export function jsonObject(text: string | null): Loose | null {
  if (text === null) return null
  try {
    const value: unknown = JSON.parse(text)
    return isLoose(value) ? value : null
  } catch {
    return null
  }
}
