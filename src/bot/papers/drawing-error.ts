/** Thrown where a file could not be drawn because what draws it ended, or never came to an end. The answer stands without it. */
export class DrawingError extends Error {
  override readonly name = 'DrawingError'
}
