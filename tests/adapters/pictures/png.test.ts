import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { drawDay } from '../../../src/adapters/pictures/day.js'
import { toPng } from '../../../src/adapters/pictures/png.js'
import { emptyDayChart, putPictures, sampleDay, sixDays } from '../../support/day-pictures.js'

const folder = mkdtempSync(join(tmpdir(), 'day-pictures-'))
afterAll(() => rmSync(folder, { recursive: true }))

// Signature and IHDR: W3C, Portable Network Graphics (third edition), 5.2 and 11.2.1.
const signature = [137, 80, 78, 71, 13, 10, 26, 10]

function sizeOf(png: Buffer): readonly [number, number] {
  expect([...png.subarray(0, 8)]).toEqual(signature)
  expect(png.toString('latin1', 12, 16)).toBe('IHDR')
  return [png.readUInt32BE(16), png.readUInt32BE(20)]
}

describe('SVG → PNG', () => {
  test('six days of the invented week, all different, in the size of their SVG', () => {
    putPictures(folder, sixDays())
    const pngs = readdirSync(folder).map((name) => readFileSync(join(folder, name)))
    expect(pngs).toHaveLength(6)
    for (const png of pngs) {
      expect(sizeOf(png)).toEqual([1000, 1012])
      // Files of a chat message: small enough for a poor signal.
      expect(png.length).toBeLessThan(300_000)
    }
    expect(new Set(pngs.map((png) => png.toString('base64'))).size).toBe(6)
    expect(sizeOf(toPng(drawDay(emptyDayChart())))).toEqual([1000, 962])
  })

  test('the same picture is the same bytes', () => {
    const svg = drawDay(sampleDay('2026-05-05'))
    expect(toPng(svg).equals(toPng(svg))).toBe(true)
  })

  test('words are really drawn, normal and bold, with our own fonts', () => {
    const svg = (inside: string) => toPng(`<svg xmlns="http://www.w3.org/2000/svg" width="300" height="60">${inside}</svg>`)
    const text = (family: string, weight: number, words = 'Rocío À 12 °C') =>
      svg(`<text x="5" y="40" font-size="30" font-family="${family}" font-weight="${weight}">${words}</text>`)
    const blank = svg('')
    expect(text('Inter', 400).equals(blank)).toBe(false)
    expect(text('Inter', 700).equals(text('Inter', 400))).toBe(false)
    // A family that we do not ship falls back to ours: no font of the system is looked at.
    expect(text('DejaVu Serif', 400).equals(text('Inter', 400))).toBe(true)
    const day = drawDay(sampleDay('2026-05-05'))
    expect(toPng(day).equals(toPng(day.replace(/<text .*?<\/text>/g, '')))).toBe(false)
  })

  test('every letter that the picture uses is in the font', () => {
    const svg = (words: string) =>
      toPng(
        `<svg xmlns="http://www.w3.org/2000/svg" width="80" height="60"><text x="5" y="40" font-size="30" font-family="Inter">${words}</text></svg>`
      )
    const missing = svg('\u{10fffd}')
    for (const letter of new Set('áéíóúñüÀàâçèêëîôùœÉÈ°·–…%/<')) expect(svg(letter === '<' ? '&lt;' : letter).equals(missing), letter).toBe(false)
  })

  test('what is no SVG is refused', () => {
    expect(() => toPng('<svg><g></svg>')).toThrow()
  })
})
