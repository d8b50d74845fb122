import { metresByWelder } from '../welds/metres.js'
import type { LaidData } from './data.js'
import type { Entry, JsonObject } from './entry.js'

/**
 * Which subjects an entry touches: its own, and those whose state it moves besides. The state of a subject is the fold
 * of all entries that touch it, so an undo refolds these and no others.
 */
export function touches(entry: Pick<Entry, 'type' | 'subject' | 'data' | 'at'>, day: string): readonly string[] {
  const also = besides(entry, day)
  return [entry.subject, ...also.filter((subject) => subject !== entry.subject)]
}

function besides({ type, data, subject }: Pick<Entry, 'type' | 'data' | 'subject'>, day: string): readonly string[] {
  const today = `day:${day}`
  switch (type) {
    case 'statement':
      return 'compatibility' in data || 'deckMoisturePassed' in data ? ['site'] : []
    case 'kit':
      return 'foam' in data || 'offRatio' in data ? ['site', today] : ['site']
    case 'coupon':
    case 'welder':
      return [today]
    case 'void':
    case 'probe':
      return ['site']
    case 'repair':
      // Re-heated: the fire watch of the day counts from it.
      return ['site', today]
    case 'note':
      return 'details' in data || subject.startsWith('punch:') ? ['site'] : []
    case 'laid':
      return ['site', ...weldersOf(data), ...('kit' in data ? [`kit:${String(data.kit)}`] : [])]
    default:
      return []
  }
}

function weldersOf(data: JsonObject): string[] {
  return [...metresByWelder(data as unknown as LaidData).keys()].map((name) => `welder:${name}`)
}
