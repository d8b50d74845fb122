import { type Asks, type Topic, topics } from '../../topics.js'
import type { Concept } from './concepts.js'

const named: Readonly<Record<Topic, readonly Concept[]>> = {
  thunder: ['thunder'],
  rain: ['rain'],
  dry: ['dry', 'humid'],
  wind: ['wind'],
  heat: ['hot'],
  cold: ['cold']
}
const work: readonly Concept[] = ['work', 'people', 'spray', 'foam', 'lay', 'weld', 'roof', 'start', 'stop', 'safe']

/** The topics of a plain question; null where it names none. */
export function topicsOf(concepts: ReadonlySet<Concept>): Asks | null {
  const asked = topics.filter((topic) => named[topic].some((concept) => concepts.has(concept)))
  if (asked.length === 0) return null
  return { topics: asked, worried: asked.includes('thunder') && work.some((concept) => concepts.has(concept)) }
}
