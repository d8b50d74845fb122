import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, test } from 'vitest'
import { withoutTables } from '../../../src/adapters/record/font-tables.js'
import { texts } from '../../../src/bot/text/index.js'

const require = createRequire(import.meta.url)

interface Glyph {
  readonly id: number
  readonly advanceWidth: number
  readonly path: { toSVG(): string }
}

/** The font library that the PDF library reads with. */
interface Font {
  readonly GSUB: unknown
  readonly GPOS: unknown
  readonly postscriptName: string
  readonly ascent: number
  readonly descent: number
  readonly unitsPerEm: number
  glyphForCodePoint(point: number): Glyph
  hasGlyphForCodePoint(point: number): boolean
  layout(words: string): { readonly glyphs: readonly Glyph[]; readonly advanceWidth: number }
}

const { create } = require('fontkit') as { create(bytes: Uint8Array): Font }
const left = ['GSUB', 'GPOS']
const fonts = ['400Regular/Inter_400Regular.ttf', '700Bold/Inter_700Bold.ttf'].map((name) => {
  const bytes = readFileSync(require.resolve(`@expo-google-fonts/inter/${name}`))
  return { name, bytes, cut: withoutTables(bytes, left) }
})

/** Every letter of Latin-1, and of all words of the bot. */
function letters(): readonly number[] {
  const latin = Array.from({ length: 0x100 }, (_, point) => point).filter((point) => point >= 0x20 && !(point >= 0x7f && point < 0xa0))
  const said = [...JSON.stringify(texts)].map((letter) => letter.codePointAt(0) as number)
  return [...new Set([...latin, ...said])]
}

/** Tags and offsets of the directory. OpenType 1.9.1, "Organization of an OpenType Font". */
function directory(font: Uint8Array): ReadonlyMap<string, string> {
  const view = Buffer.from(font)
  const at = (index: number) => 12 + 16 * index
  return new Map(
    Array.from({ length: view.readUInt16BE(4) }, (_, n) => [view.toString('latin1', at(n), at(n) + 4), view.toString('hex', at(n) + 4, at(n + 1))])
  )
}

describe.each(fonts)('$name without its tables of substitution and positioning', ({ bytes, cut }) => {
  test('the directory has the others as they were, sorted, and its own numbers', () => {
    const [before, after] = [directory(bytes), directory(cut)]
    expect([...before.keys()].filter((tag) => !after.has(tag))).toEqual(['GPOS', 'GSUB'])
    for (const [tag, entry] of after) expect(before.get(tag)).toBe(entry)
    expect([...after.keys()]).toEqual([...after.keys()].sort())
    // 14 tables: 8 is the largest power of two, 2³ · 16, 3, and what is left of 14 · 16.
    expect([4, 6, 8, 10].map((at) => Buffer.from(cut).readUInt16BE(at))).toEqual([14, 128, 3, 96])
    expect(bytes.subarray(12 + 16 * 16).equals(cut.subarray(12 + 16 * 16))).toBe(true)
  })

  test('every letter has the outline and the width that it had', () => {
    const [before, after] = [create(bytes), create(cut)]
    expect([before.GSUB == null, after.GSUB == null, after.GPOS == null]).toEqual([false, true, true])
    expect([after.postscriptName, after.ascent, after.descent, after.unitsPerEm]).toEqual([
      before.postscriptName,
      before.ascent,
      before.descent,
      before.unitsPerEm
    ])
    const all = letters()
    expect(all.length).toBeGreaterThan(190)
    for (const point of all) {
      expect(after.hasGlyphForCodePoint(point)).toBe(before.hasGlyphForCodePoint(point))
      const [was, is] = [before.glyphForCodePoint(point), after.glyphForCodePoint(point)]
      expect([is.id, is.advanceWidth, is.path.toSVG()], String.fromCodePoint(point)).toEqual([was.id, was.advanceWidth, was.path.toSVG()])
    }
  })

  test('words are as wide as their letters together', () => {
    const font = create(cut)
    for (const words of ['soplado número 119 ñ é ≥ 5 °C', '2x3 -> 0.1.0', 'œuvre réalisée à Sète']) {
      const own = [...words].reduce((sum, letter) => sum + font.glyphForCodePoint(letter.codePointAt(0) as number).advanceWidth, 0)
      expect(font.layout(words).advanceWidth).toBe(own)
    }
  })
})

test('what is no font, or ends within its directory, is refused', () => {
  const { bytes } = fonts[0] as (typeof fonts)[number]
  for (const bad of [new Uint8Array(0), new Uint8Array(40), bytes.subarray(0, 100), new TextEncoder().encode('OTTO and no more of it')]) {
    expect(() => withoutTables(bad, left)).toThrow(/font/)
  }
  expect(Buffer.from(withoutTables(bytes, [])).equals(bytes)).toBe(true)
})
