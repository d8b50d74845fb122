import fc from 'fast-check'

/** What an attacker, a broken service or a tired hand puts where something else belongs. */
export const nastyValues: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e308,
  -1e308,
  1e-320,
  2 ** 53,
  'NaN',
  '',
  '0',
  ' ',
  '\u0000',
  '\u202e\u2066',
  '\ud800',
  '<!channel> <@U0> <https://example.org|x>',
  '../../etc/passwd',
  "'; drop table entries; --",
  '=1+1',
  '{"a":1}',
  '9999-12-31T23:59:59Z',
  '0000-00-00T00:00:00Z',
  '2026-05-04T25:61:00Z',
  'P99999999D',
  'x'.repeat(5000),
  [],
  {},
  [[[[[[]]]]]],
  { constructor: { prototype: { a: 1 } } },
  JSON.parse('{"__proto__":{"polluted":true},"a":1}')
]

export type Change =
  | { readonly what: 'drop' | 'double' | 'reverse' | 'empty' | 'many' | 'deep' | 'negate' | 'text' | 'proto'; readonly at: number }
  | { readonly what: 'set'; readonly at: number; readonly value: unknown }

/** One change of a value somewhere inside, by the number of the place. */
const change: fc.Arbitrary<Change> = fc.oneof(
  fc.record({
    what: fc.constantFrom('drop', 'double', 'reverse', 'empty', 'many', 'deep', 'negate', 'text', 'proto' as const),
    at: fc.nat(1_000_000)
  }),
  fc.record({ what: fc.constant('set' as const), at: fc.nat(1_000_000), value: fc.constantFrom(...nastyValues) })
)

export const changes: fc.Arbitrary<readonly Change[]> = fc.array(change, { minLength: 1, maxLength: 4 })

type Place = { readonly holder: Record<string, unknown>; readonly key: string }

/** Places of a value, level by level: what stands high up comes first, so that whole parts are hit as often as single numbers. */
function placesIn(root: Record<string, unknown>): readonly (readonly Place[])[] {
  const levels: Place[][] = []
  let holders: Record<string, unknown>[] = [root]
  for (let depth = 0; depth < 12 && holders.length > 0; depth += 1) {
    const level = holders.flatMap((holder) => Object.keys(holder).map((key) => ({ holder, key })))
    if (level.length > 0) levels.push(level)
    holders = level
      .map(({ holder, key }) => holder[key])
      .filter((value): value is Record<string, unknown> => typeof value === 'object' && value !== null)
  }
  return levels
}

/** How many copies and how deep a nest are tried. */
export interface Sizes {
  readonly many: number
  readonly deep: number
  /** Of JSON that one change may make, so that some is more than any reader takes, and none more than a test can bear. */
  readonly chars: number
}

function deep(value: unknown, levels: number): unknown {
  let nested = value
  for (let i = 0; i < levels; i += 1) nested = [nested]
  return nested
}

/**
 * Many of the same, each on its own: a change in one is not a change in all of them, else a thousand of a thousand take all memory. No
 * more than `chars` of JSON together.
 */
function copies(of: readonly unknown[], sizes: Sizes): unknown {
  const json = JSON.stringify(of) ?? ''
  // What writes JSON looks for circles all the way up from every bracket: many deep nests would keep the test busy, not the reader.
  const most = json.includes('['.repeat(50)) ? 20 : sizes.many
  const many = Math.max(1, Math.min(most, Math.floor((sizes.chars * of.length) / Math.max(1, json.length))))
  return Array.from({ length: many }, (_, i) => structuredClone(of[i % of.length]))
}

function changed(value: unknown, made: Change, sizes: Sizes): unknown {
  switch (made.what) {
    case 'set':
      return structuredClone(made.value)
    case 'double':
      return Array.isArray(value) ? [...value, ...value] : typeof value === 'string' ? value + value : value
    case 'reverse':
      return Array.isArray(value) ? [...value].reverse() : value
    case 'empty':
      return Array.isArray(value) ? [] : typeof value === 'object' ? {} : ''
    case 'many':
      return copies(Array.isArray(value) && value.length > 0 ? value : [value], sizes)
    case 'deep':
      return deep(value, sizes.deep)
    case 'negate':
      return typeof value === 'number' ? -1000 * value : value
    case 'text':
      return String(value)
    case 'proto':
      return typeof value === 'object' && value !== null && !Array.isArray(value)
        ? Object.assign(JSON.parse('{"__proto__":{"polluted":true}}'), value)
        : value
    default:
      return value
  }
}

/** A JSON value with some changes made in it; the original stays as it is. */
export function mutated(value: unknown, all: readonly Change[], sizes: Sizes = { many: 1000, deep: 1500, chars: 6_000_000 }): unknown {
  const root: Record<string, unknown> = { value: structuredClone(value) }
  // One nest is deep enough: three in one another are more than the writer of JSON itself can bear.
  const nest = all.find(({ what }) => what === 'deep')
  for (const made of all.filter((each) => each.what !== 'deep' || each === nest)) {
    const levels = placesIn(root)
    const level = levels[made.at % levels.length] ?? []
    const place = level[made.at % Math.max(1, level.length)]
    if (place === undefined) continue
    if (made.what === 'drop' && place.holder !== root) {
      if (Array.isArray(place.holder)) place.holder.splice(Number(place.key), 1)
      else delete place.holder[place.key]
    } else place.holder[place.key] = changed(place.holder[place.key], made, sizes)
  }
  return root.value
}

export interface Cut {
  readonly at: number
  readonly what: 'end' | 'hole' | 'noise'
}

/** A text that was cut short, lost a part, or took noise on the way. */
export const cuts: fc.Arbitrary<readonly Cut[]> = fc.array(
  fc.record({ at: fc.nat(1_000_000), what: fc.constantFrom('end', 'hole', 'noise' as const) }),
  { maxLength: 2 }
)

export function cutText(text: string, all: readonly Cut[]): string {
  return all.reduce((now, { at, what }) => {
    const place = at % (now.length + 1)
    if (what === 'end') return now.slice(0, place)
    if (what === 'hole') return now.slice(0, place) + now.slice(place + 1 + (at % 97))
    return `${now.slice(0, place)}${'\u0000{[,]}"\\:-eE+'.charAt(at % 13)}${now.slice(place)}`
  }, text)
}

/** Nothing that was read may have reached the prototype of every object. */
export function polluted(): boolean {
  return 'polluted' in {}
}
