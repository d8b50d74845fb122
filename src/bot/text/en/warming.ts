import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const warming: Text['warming'] = {
  likely: (at) => `likely ready already about ${at}`,
  learned: (factor, pairs) => `mixing factor ${factor}, learned from ${counted('en', pairs, { one: 'pair of readings', other: 'pairs of readings' })}`
}
