/** Runs a sticky pattern at a place; null when it does not match there. */
export function matchAt(pattern: RegExp, text: string, pos: number): RegExpExecArray | null {
  pattern.lastIndex = pos
  return pattern.exec(text)
}
