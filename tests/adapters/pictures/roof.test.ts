import { describe, expect, it } from 'vitest'
import { pictures } from '../../../src/adapters/pictures/index.js'
import { toPng } from '../../../src/adapters/pictures/png.js'
import { drawRoof } from '../../../src/adapters/pictures/roof.js'
import { drawStrip } from '../../../src/adapters/pictures/strip.js'
import { escapeXml } from '../../../src/adapters/pictures/svg.js'
import { texts } from '../../../src/bot/text/index.js'
import { roofAlt } from '../../../src/bot/views/roof-alt.js'
import { stripAlt } from '../../../src/bot/views/strip-alt.js'
import { outlineOf } from '../../../src/core/sheets/outline.js'
import { contrast } from '../../support/contrast.js'
import { box } from '../../support/layouts.js'
import { fiveRoofs, laidOut, stripDrawing } from '../../support/roof-pictures.js'
import { elementsOf, wordsOf } from '../../support/xml.js'

const roofs = fiveRoofs()
const cases = Object.entries(roofs)
const roof = (name: string) => {
  const found = roofs[name]
  if (found === undefined) throw new Error(name)
  return found
}

describe('the drawing of a roof', () => {
  it.each(cases)('%s: well-formed, every strip and opening on it, the same bytes again', (_, drawing) => {
    const svg = drawRoof(drawing)
    const elements = elementsOf(svg)
    const { strips, outline } = drawing.layout
    expect(elements[0]).toMatchObject({ name: 'svg', attributes: { width: '1000', lang: drawing.lang } })
    expect(elements.flatMap(({ attributes }) => attributes['data-strip'] ?? [])).toEqual(strips.map(({ number }) => String(number)))
    expect(elements.filter(({ attributes }) => attributes['data-opening'] === 'yes')).toHaveLength(outline.holes.length)
    expect(svg).toContain(escapeXml(roofAlt(drawing)))
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null/)
    expect(drawRoof(structuredClone(drawing))).toBe(svg)
  })

  it.each(cases)('%s: nothing is written beyond its edges, and every word can be read on a phone', (_, drawing) => {
    const svg = drawRoof(drawing)
    const [root, ...elements] = elementsOf(svg)
    const height = Number(root?.attributes.height)
    expect(height).toBeLessThanOrEqual(2000)
    for (const { name, attributes } of elements.filter((each) => each.name === 'text' || each.name === 'rect')) {
      if (attributes.x === undefined || attributes.y === undefined) continue
      expect(Number(attributes.x), name).toBeGreaterThanOrEqual(0)
      expect(Number(attributes.x), name).toBeLessThanOrEqual(1000)
      expect(Number(attributes.y), name).toBeLessThanOrEqual(height)
    }
    // Shown 380 px wide: 24 here are 9 px there.
    for (const { attributes } of elements.filter(({ name }) => name === 'text')) expect(Number(attributes['font-size'])).toBeGreaterThanOrEqual(24)
  })

  it('says sizes, lengths of cut, courses, zones and voids', () => {
    const said = wordsOf(drawRoof(roof('demo')))
    for (const words of ['24 m', '36 m', '20 m', '1', '19', 'F', 'G', 'H', 'I', '12', 'N', 'invented site', '24 m × 36 m · 19 courses along x'])
      expect(said).toContain(words)
    expect(said).toContain('19 strips')
    expect(said).toContain('2 open voids')
    expect(said).toContain('the pattern is the engineer’s')
  })

  it('leaves zones of other shapes to the engineer', () => {
    const svg = drawRoof(roof('ell'))
    expect(wordsOf(svg)).toContain(texts.es.roofPicture.zonesEngineer)
    expect(svg).not.toContain('data-zone-border')
    expect(drawRoof(roof('demo'))).toContain('data-zone-border')
  })

  it('numbers its patches, or says how many had no room', () => {
    const drawing = roof('ell')
    const { patches } = drawing.layout
    expect(patches.length).toBeGreaterThan(10)
    for (const use of ['phone', 'paper'] as const) {
      const said = wordsOf(drawRoof({ ...drawing, use }))
      const numbered = patches.filter(({ number }) => said.includes(String(number))).length
      const missing = said.find((words) => /sin lugar/.test(words))
      expect(numbered + Number(missing?.match(/\d+/)?.[0] ?? 0)).toBeGreaterThanOrEqual(patches.length)
    }
  })

  it('marks an open void where it lies', () => {
    const drawing = roof('demo')
    const [first] = drawing.voids
    // Course 4 begins at 3 × (2000 − 80) mm, by hand; 12 m along it.
    expect(first).toEqual({ number: 1, at: [12_000, 5760] })
    const { voids } = { ...drawing, voids: [] }
    expect(drawRoof({ ...drawing, voids })).not.toBe(drawRoof(drawing))
  })

  it('has no colour without a shape, and writes dark on light', () => {
    const fills = new Set(elementsOf(drawRoof(roof('demo'))).flatMap(({ name, attributes }) => (name === 'text' ? [attributes.fill ?? ''] : [])))
    for (const fill of fills) expect(contrast(fill, fill === '#ffffff' ? '#111111' : '#ffffff')).toBeGreaterThan(7)
    const borders = elementsOf(drawRoof(roof('demo'))).filter(({ attributes }) => attributes['data-zone-border'] === 'yes')
    for (const { attributes } of borders) expect(attributes['stroke-dasharray']).toBeTruthy()
  })

  it('escapes the name of a site', () => {
    const site = '<b>&"\u0007x'
    const svg = drawRoof({ ...roof('small'), site })
    expect(elementsOf(svg).map(({ name }) => name)).not.toContain('b')
    expect(wordsOf(svg).join()).toContain('<b>&"x')
  })

  it('is drawn at its scale: 24 m and 36 m are as 2 to 3', () => {
    const svg = drawRoof({ ...roof('demo'), zones: null })
    const path =
      svg
        .match(/d="M([\d. L-]+)Z" fill="none"/)?.[1]
        ?.split('L')
        .map((pair) => pair.split(' ').map(Number)) ?? []
    const [xs, ys] = [path.map(([x]) => x as number), path.map(([, y]) => y as number)]
    const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]
    expect(high / wide).toBeCloseTo(1.5, 3)
  })

  it('goes out as PNG and as SVG', () => {
    const data = roof('small')
    const png = pictures.roof({ kind: 'roof', name: 'x.png', alt: '', data })
    expect(Buffer.from(png.bytes).equals(toPng(drawRoof(data)))).toBe(true)
    const svg = pictures['roof-svg']({ kind: 'roof-svg', name: 'x.svg', alt: '', data })
    expect({ mime: svg.mime, text: new TextDecoder().decode(svg.bytes) }).toEqual({ mime: 'image/svg+xml', text: drawRoof(data) })
  })

  it('of a large roof stays a picture, and its alt text below 2,000 characters', () => {
    const layout = laidOut(outlineOf(box(0, 0, 100_000, 75_000), []))
    const voids = Array.from({ length: 200 }, (_, index) => ({ number: index + 1, at: [index * 450, index * 350] as const }))
    const drawing = { ...roof('demo'), layout, zones: null, voids }
    expect(elementsOf(drawRoof(drawing)).length).toBeGreaterThan(500)
    for (const lang of ['en', 'es', 'fr'] as const) expect(roofAlt({ ...drawing, lang }).length).toBeLessThan(2000)
  })
})

describe('the drawing of a strip', () => {
  // Lengths by the worked example: 2 m, gap 6 mm.
  it('says every dimension', () => {
    const svg = drawStrip(stripDrawing())
    const said = wordsOf(svg)
    for (const words of [
      '2150 mm',
      '150 mm',
      '72 mm',
      '75 mm',
      '2000 mm',
      'not to scale',
      'gap 6 mm',
      'land: 72 mm (least 38 mm)',
      'corners r 25 mm'
    ])
      expect(said, words).toContain(words)
    expect(svg).toContain(escapeXml(stripAlt(stripDrawing())))
  })

  it.each([
    [{ edgeMm: 200, sheets: 3, offMm: 10 }],
    [{ edgeMm: 0 }],
    [{ gapMm: 0 }],
    [{ gapMm: -20 }],
    [{ gapMm: 400, offMm: -300 }],
    [{ sheets: 1000 }],
    [{ stripWidthMm: 60 }]
  ])('%j: well-formed, in three languages and both systems, inside its edges', (more) => {
    for (const lang of ['en', 'es', 'fr'] as const)
      for (const units of ['metric', 'us'] as const) {
        const svg = drawStrip(stripDrawing(more, { lang, units }))
        const elements = elementsOf(svg)
        expect(svg).not.toMatch(/NaN|undefined|Infinity|="-\d/)
        expect(elements.filter(({ attributes }) => attributes['data-strip'] === 'yes')).toHaveLength(1)
        const gap = 'gapMm' in more && (more.gapMm ?? 0) <= 0 ? 0 : 1
        expect(elements.filter(({ attributes }) => attributes['data-gap'] === 'yes')).toHaveLength(gap)
        for (const { attributes } of elements.filter(({ name }) => name === 'text'))
          expect(Number(attributes['font-size'])).toBeGreaterThanOrEqual(28)
      }
  })

  it('shows which side the joint is off to', () => {
    const middle = (offMm: number) => {
      const gap = elementsOf(drawStrip(stripDrawing({ offMm }))).find(({ attributes }) => attributes['data-gap'] === 'yes')
      return Number(gap?.attributes.y)
    }
    expect(middle(20)).toBeGreaterThan(middle(0))
    expect(middle(-20)).toBeLessThan(middle(0))
  })
})
