import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { parseAst } from 'vitest/node'
import { attacksOn } from './support/pattern/attacks.js'
import { parsePattern } from './support/pattern/parse.js'
import { walk } from './support/pattern/steps.js'

/** Every pattern of the program must find, or not, in a time that grows with the text and no faster: its steps are counted, not its time. */
const src = join(import.meta.dirname, '..', 'src')

interface Found {
  readonly pattern: string
  readonly flags: string
}

function literals(): readonly Found[] {
  const found: Found[] = []
  const look = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return
    const { regex } = node as { readonly regex?: Found }
    if (regex !== undefined) found.push({ pattern: regex.pattern, flags: regex.flags })
    else Object.values(node).forEach(look)
  }
  for (const file of readdirSync(src, { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts')) continue
    const text = readFileSync(join(src, file), 'utf8')
    // Parsing is slow: only where something stands that could be a literal.
    if (/(?:[(,=:?!&|[{\s]|return )\/[^/*\s]/.test(text)) look(parseAst(text, { lang: 'ts' }))
  }
  return found
}

/** Patterns put together at run time: caught where they are made. */
const made = ['bot/words/number.ts', 'bot/words/unit.ts', 'bot/words/outline/lengths.ts', 'bot/words/vocabularies/site.ts'] as const
const Original = globalThis.RegExp
afterAll(() => {
  globalThis.RegExp = Original
})

async function constructed(): Promise<readonly Found[]> {
  const found: Found[] = []
  globalThis.RegExp = new Proxy(Original, {
    construct: (target, args: [string, string?]) => {
      if (typeof args[0] === 'string' && (new Error().stack ?? '').split('\n')[2]?.includes('/src/'))
        found.push({ pattern: args[0], flags: args[1] ?? '' })
      return new target(...args)
    }
  })
  for (const file of made) await import(join(src, file))
  globalThis.RegExp = Original
  return found
}

/** Those that grow by the square, and what keeps their texts short. */
const bounded: Readonly<Record<string, string>> = {
  '/=+$/': 'a key in the settings of whoever runs the program',
  '/\\/+$/': 'an address in the settings of whoever runs the program',
  '/\\s*\\n\\s*/g': 'an answer of ours to a message of at most 2,000 characters',
  '/[,;:!?.=…»]+$/': 'cut to 60 characters before',
  '/[.,:]+$/': 'a message of at most 2,000 characters',
  '/\\b([a-z][a-z0-9+.-]*:\\/\\/)[^\\s/@]+@/gi': 'a log line, cut to 2,000 characters before',
  '/[\\w.+-]+@[\\w-]+(?:\\.[\\w-]+)+/g': 'a log line, cut to 2,000 characters before',
  '/(Key \\([^)]*\\)=)\\(.*?\\)/g': 'a log line, cut to 2,000 characters before',
  '/"(?:[^"\\\\]|\\\\.){24,}"/g': 'a log line, cut to 2,000 characters before'
}

const short = 100
const most = 300_000

/** How much more steps a text of twice the length takes at worst: 2 in step with it, 4 by the square. */
function growth({ pattern, flags }: Found): number {
  const read = parsePattern(pattern, flags)
  const longer = attacksOn(read, 2 * short)
  let worst = 1
  for (const [index, text] of attacksOn(read, short).entries()) {
    const [here, there] = [walk(read, flags, text, most), walk(read, flags, longer[index] ?? '', most)]
    // So many steps for so short a text: nobody would wait for the end.
    if (there.steps > most) return Number.POSITIVE_INFINITY
    // The walk finds what the engine finds.
    expect(here.matched, `/${pattern}/${flags} in ${JSON.stringify(text)}`).toBe(new Original(pattern, flags).test(text))
    worst = Math.max(worst, there.steps / here.steps)
  }
  return worst
}

describe('patterns', () => {
  it('take steps in step with the text, but for those whose texts are short', async () => {
    const all = [...literals(), ...(await constructed())]
    expect(all.length).toBeGreaterThan(180)
    const each = new Map(all.map((found) => [`/${found.pattern}/${found.flags}`, found]))
    const slow = [...each].filter(([, found]) => growth(found) > 2.5).map(([name]) => name)
    expect(slow.sort()).toEqual(Object.keys(bounded).sort())
  })

  // Known to be slow, from the literature on such patterns: the way of counting finds them. Source: OWASP, "Regular expression Denial of Service".
  it.each(['^(a+)+$', '^([a-zA-Z]+)*$', '^(a|aa)+$', '^(a|a?)+$', '\\s+$', '^\\s*(0\\s*[\\r\\n]+\\s*SECTION)', '^(\\d+\\.?\\d*)$'])(
    '/%s/ would be found',
    (pattern) => {
      expect(growth({ pattern, flags: '' })).toBeGreaterThan(2.5)
    }
  )

  it.each(['^a+$', 'a+b?', '^(?:a|b)+$', '<[^<>]*>', '^\\d{1,9}(?:\\.\\d{1,9})?$'])('/%s/ is fine', (pattern) => {
    expect(growth({ pattern, flags: 'u' })).toBeLessThan(2.5)
  })
})
