import { atEnd, find, noValue } from '../cursor.js'
import type { Fields } from '../fields.js'
import { flag, negated, state } from '../take.js'
import type { Heard, Vocabulary, Walk } from '../walk.js'

const words = {
  dry: { en: 'dry', es: 'sec(o,a,os,as)', fr: 'sec(,s) sèche(,s)' },
  wet: { en: 'wet', es: 'mojad(o,a,os,as)', fr: 'mouillé(,e,s,es)' },
  clean: { en: 'clean', es: 'limpi(o,a,os,as)', fr: 'propre(,s)' },
  dirty: { en: 'dirty', es: 'suci(o,a,os,as)', fr: 'sale(,s)' }
}
export const surfaceWords = words

type SurfaceKey = 'substrateDry' | 'fleeceDry' | 'lapDry' | 'substrateClean' | 'lapClean'

/** Which fields a state of a surface sets. */
export interface Surface {
  readonly dry: readonly SurfaceKey[]
  readonly clean: readonly SurfaceKey[]
}

function all(keys: readonly SurfaceKey[], value: boolean): Fields {
  return Object.fromEntries(keys.map((key) => [key, value]))
}

/** dry, wet, clean and dirty by themselves: all surfaces of the command. */
export function surfaceStates(surface: Surface): Vocabulary {
  const dry = { label: 'dry', value: false }
  const clean = { label: 'clean', value: false }
  return {
    dry: { words: words.dry, read: flag(all(surface.dry, true)), negated: negated(all(surface.dry, false)) },
    wet: { words: words.wet, read: flag(all(surface.dry, false), dry) },
    clean: { words: words.clean, read: flag(all(surface.clean, true)), negated: negated(all(surface.clean, false)) },
    dirty: { words: words.dirty, read: flag(all(surface.clean, false), clean) }
  }
}

const states: Readonly<Record<string, { readonly of: 'dry' | 'clean'; readonly value: boolean }>> = {
  dry: { of: 'dry', value: true },
  wet: { of: 'dry', value: false },
  clean: { of: 'clean', value: true },
  dirty: { of: 'clean', value: false }
}

/** The state right after the name of a surface, of that surface alone; false when none stands there. */
export function takeSurfaceState(walk: Walk, heard: Heard, surface: Surface): boolean {
  const found = atEnd(walk) ? null : find(walk, walk.lexicon)
  const said = found && Object.hasOwn(states, found.label) ? states[found.label] : undefined
  if (!found || said === undefined || surface[said.of].length === 0) return false
  walk.pos = found.end
  state(walk, { raw: `${heard.raw} ${found.raw}`, label: heard.label }, all(surface[said.of], said.value), found.label)
  return true
}

/** The name of a surface, which needs a state after it. */
export function surfaceName(surface: Surface) {
  return (walk: Walk, heard: Heard): void => {
    if (!takeSurfaceState(walk, heard, surface)) throw noValue(walk, heard.raw, heard.label)
  }
}
