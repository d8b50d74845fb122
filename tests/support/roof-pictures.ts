import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { toPng } from '../../src/adapters/pictures/png.js'
import { drawRoof } from '../../src/adapters/pictures/roof.js'
import { drawStrip } from '../../src/adapters/pictures/strip.js'
import { layOut } from '../../src/core/sheets/lay-out.js'
import type { Along, Layout } from '../../src/core/sheets/layout.js'
import { notchedRectangle, outlineOf } from '../../src/core/sheets/outline.js'
import type { Polygon } from '../../src/core/sheets/polygon.js'
import { type OpenVoid, placedVoid, type RoofDrawing } from '../../src/core/sheets/roof-drawing.js'
import { sizesOf } from '../../src/core/sheets/sizes.js'
import { type StripInput, stripSize } from '../../src/core/sheets/strip.js'
import type { StripDrawing } from '../../src/core/sheets/strip-drawing.js'
import { windZones } from '../../src/core/sheets/zones/index.js'
import { sheet } from './facts.js'
import { box } from './layouts.js'

/** A roof with the sizes of common practice, unless patches are wanted from fewer layers. */
export function laidOut(outline: Polygon, along: Along | null = null, patchFromLayers = 4): Layout {
  const layout = layOut(outline, { ...sizesOf(sheet()), patchFromLayers }, along)
  if (layout === null) throw new Error('not laid out')
  return layout
}

const plain = { zones: null, voids: [], use: 'phone', lang: 'en', units: 'metric', invented: false } as const

function placed(layout: Layout, voids: readonly OpenVoid[]) {
  return voids.flatMap((each) => placedVoid(each, layout) ?? [])
}

/** Five roofs, invented, each with its own shape, language, units, zones and voids. */
export function fiveRoofs(): Readonly<Record<string, RoofDrawing>> {
  const demo = laidOut(outlineOf(box(0, 0, 24_000, 36_000), []), 'x')
  const ell = laidOut(
    outlineOf(notchedRectangle(24_000, 36_000, [{ corner: 'ne', widthMm: 6000, depthMm: 8000 }]), [
      box(5000, 9000, 7000, 10_200),
      box(14_000, 20_000, 15_000, 21_000)
    ]),
    'x',
    3
  )
  const long = laidOut(outlineOf(box(0, 0, 90_000, 14_000), [box(10_000, 4000, 12_000, 6000)]))
  const small = laidOut(outlineOf(box(0, 0, 4500, 6000), []))
  const odd = laidOut(
    outlineOf(
      [
        [0, 0],
        [30_000, 2000],
        [42_000, 15_000],
        [38_000, 30_000],
        [12_000, 34_000],
        [-3000, 18_000]
      ],
      [
        box(8000, 8000, 12_000, 10_000),
        [
          [25_000, 8000],
          [27_000, 8000],
          [26_000, 10_000]
        ]
      ]
    ),
    'y'
  )
  const voids: readonly OpenVoid[] = [
    { number: 1, course: 4, on: 'lap', distanceM: 12 },
    { number: 12, course: 7, on: 'end', distanceM: 20 }
  ]
  return {
    demo: { ...plain, site: 'demo', layout: demo, zones: windZones('en', { widthM: 24, depthM: 36 }, 8), voids: placed(demo, voids), invented: true },
    ell: { ...plain, site: 'ell', layout: ell, zones: windZones('asce', null, 8), voids: placed(ell, voids.slice(0, 1)), lang: 'es' },
    long: { ...plain, site: 'long', layout: long, zones: windZones('nbcc', { widthM: 90, depthM: 14 }, 6), lang: 'fr' },
    small: { ...plain, site: 'small', layout: small, zones: windZones('asce', { widthM: 4.5, depthM: 6 }, 3), units: 'us' },
    odd: { ...plain, site: 'odd', layout: odd, lang: 'fr', units: 'us' }
  }
}

export const plainStrip: StripInput = {
  ...{ widthM: 2, sheets: 1, gapMm: 6, offMm: 0, edgeMm: null },
  ...{ lapMm: 80, pastLapMm: 75, stripWidthMm: 150, cornerRadiusMm: 25 }
}

export function stripDrawing(more: Partial<StripInput> = {}, how: Partial<Pick<StripDrawing, 'lang' | 'units'>> = {}): StripDrawing {
  const strip = { ...plainStrip, ...more }
  return { strip, size: stripSize(strip), minWidthMm: 38, lang: 'en', units: 'metric', ...how }
}

/** Puts drawings into a folder to be looked at by a person. */
export function putRoofs(folder: string): void {
  mkdirSync(folder, { recursive: true })
  for (const [name, drawing] of Object.entries(fiveRoofs()))
    for (const use of ['phone', 'paper'] as const) writeFileSync(join(folder, `${name}-${use}.png`), toPng(drawRoof({ ...drawing, use })))
  writeFileSync(join(folder, 'strip.png'), toPng(drawStrip(stripDrawing())))
}
