import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const warming: Text['warming'] = {
  likely: (at) => `sans doute prête dès ${at}`,
  learned: (factor, pairs) =>
    `facteur de brassage ${factor}, appris de ${counted('fr', pairs, { one: 'paire de relevés', many: 'de paires de relevés', other: 'paires de relevés' })}`
}
