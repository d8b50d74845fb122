/**
 * Keeps the last values that a pure function gave, by a key that holds all they follow from: at most `most` of them, the one not
 * asked for longest goes first. What is kept is shared: nobody may change it.
 */
export function createMemo<T>(most: number): (key: string, make: () => T) => T {
  const kept = new Map<string, { readonly value: T }>()
  return (key, make) => {
    const found = kept.get(key) ?? { value: make() }
    kept.delete(key)
    if (kept.size >= most) kept.delete(kept.keys().next().value as string)
    kept.set(key, found)
    return found.value
  }
}
