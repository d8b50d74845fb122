import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const warming: Text['warming'] = {
  likely: (ready, sure) => `ready by ${sure} at the latest, likely about ${ready}`,
  learned: (factor, pairs) => `mixing factor ${factor}, learned from ${counted('en', pairs, { one: 'pair of readings', other: 'pairs of readings' })}`
}
