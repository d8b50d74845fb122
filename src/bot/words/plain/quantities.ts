import type { Concept } from './concepts.js'
import type { Heard, Part } from './heard.js'

type NumberPart = Extract<Part, { kind: 'number' }>

const lengthUnits: ReadonlySet<string | null> = new Set(['m', 'ft'])
const smallUnits: ReadonlySet<string | null> = new Set(['mm', 'cm', 'in'])
const counted: ReadonlySet<Concept> = new Set(['joint', 'strip'])

/** The nearest concept on one side of a place, over little words; null at a number or the end. */
function beside(parts: readonly Part[], at: number, step: 1 | -1): Concept | null {
  for (let i = at + step; i >= 0 && i < parts.length; i += step) {
    const part = parts[i] as Part
    if (part.kind !== 'concept') return null
    if (part.concept !== 'filler' && part.concept !== 'need') return part.concept
  }
  return null
}

/** The word of the command for one number of a question about strips; null when it is not clear what it measures. */
function stripWord(parts: readonly Part[], at: number): string | null {
  const { raw, unit, times } = parts[at] as NumberPart
  const before = beside(parts, at, -1)
  const after = beside(parts, at, 1)
  if (times) return unit === null ? `x${raw}` : null
  if (unit === null && after !== null && counted.has(after)) return /^\d{1,4}$/.test(raw) ? `x${raw}` : null
  if (unit === null && before === 'gap') return `gap ${raw}`
  if (smallUnits.has(unit) && (before === 'gap' || after === 'gap')) return `gap ${raw}`
  if (lengthUnits.has(unit)) return raw
  return unit === null && before === 'wide' ? raw : null
}

/** `strip 2 m x4 gap 6 mm`; null when a number is not clear. */
export function stripMessage({ parts }: Heard): string | null {
  const words: string[] = ['strip']
  for (let at = 0; at < parts.length; at += 1) {
    const part = parts[at] as Part
    if (part.kind === 'name') return null
    if (part.kind !== 'number') continue
    const word = stripWord(parts, at)
    if (word === null) return null
    words.push(word)
  }
  return words.join(' ')
}

/** `sheets 20x30 m`, or the roof of the site; null when the numbers are no size. */
export function sheetsMessage({ parts }: Heard): string | null {
  const numbers = parts.filter((part): part is NumberPart => part.kind === 'number')
  if (numbers.length === 0) return parts.some(({ kind }) => kind === 'name') ? null : 'sheets'
  const [first, second] = numbers
  if (numbers.length !== 2 || first === undefined || second === undefined) return null
  const ofSize = [first.unit, second.unit].every((unit) => unit === null || lengthUnits.has(unit))
  if (!ofSize || first.times) return null
  return `sheets ${first.raw} x ${second.raw}${second.times && second.unit !== null ? ` ${second.unit}` : ''}`
}
