import type { PostKind } from './index.js'
import type { PostOn, Written } from './post.js'

/** Puts posts into words elsewhere while this thread waits for the store. What is said is the same wherever it is put into words. */
export interface Speaker {
  /** How many posts to hand it at once, so that it never waits. */
  readonly width: number
  /** The words of a post; null where it cannot tell them: then they are found here. */
  speak(kind: PostKind, on: PostOn): Promise<Written | null>
  /** Lets its answers in: an embedded store answers at once, so that nothing else would have its turn. */
  letIn(): Promise<void>
  close(): Promise<void>
}
