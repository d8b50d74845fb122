import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { substrateName } from './open.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { strings } from './read.js'

const mostSubstrates = 3

/** A page whose head gives way to what must be read before it: nobody reads past a GO. */
export function ledBy<P extends Pick<Page, 'head' | 'lines'>>(page: P, first: readonly string[], { first: words }: Text): P {
  const [head, ...lines] = first
  return head === undefined ? page : { ...page, head, lines: [...lines, words.otherwise(page.head), ...page.lines] }
}

/** Before whatever is said of gluing: a test square that failed, and what to do; nothing where none did. */
export function bondFirst(substrates: readonly string[], text: Text): readonly string[] {
  if (substrates.length === 0) return []
  const names = substrates.slice(0, mostSubstrates).map((kind) => substrateName(kind, text))
  return [`${shapes['no-go']} ${text.first.glueNoMore(names.join(', '))}`, `→ ${text.fixes['test:bond']}`]
}

/** The same of an answer's numbers. */
export function afterBond(page: Page, { numbers }: Pick<Answer, 'numbers'>, text: Text): Page {
  return ledBy(page, bondFirst(strings(numbers, 'bondFailed'), text), text)
}
