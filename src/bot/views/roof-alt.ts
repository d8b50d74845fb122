import { boxOf, type Point } from '../../core/sheets/polygon.js'
import type { RoofDrawing } from '../../core/sheets/roof-drawing.js'
import { zoneStandards } from '../../core/sheets/zones/index.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'

const mostVoids = 20

/** Lengths as they stand on a drawing, and areas. */
export function drawingAmounts({ lang, units }: Pick<How, 'lang' | 'units'>) {
  const how: How = { lang, units, zone: 'utc' }
  return {
    m: (mm: number) => amount(mm / 1000, 'm', how),
    mm: (mm: number) => amount(mm, 'mm', how),
    m2: (areaM2: number) => amount(areaM2, 'm2', how)
  }
}

/** Size of a roof over all, and how its courses lie. */
export function roofLine({ layout, lang, units }: RoofDrawing, { roofPicture }: Text): string {
  const { m } = drawingAmounts({ lang, units })
  const { minX, minY, maxX, maxY } = boxOf(layout.outline.outer)
  return [roofPicture.size(m(maxX - minX), m(maxY - minY)), roofPicture.courses(layout.courses, layout.along)].join(' · ')
}

/** What is counted on a drawing: what there is none of is left out. */
function roofCounts({ layout, voids }: RoofDrawing, { roofPicture }: Text): readonly string[] {
  const counts = [
    [layout.rolls.length, roofPicture.rolls],
    [layout.joints.length, roofPicture.joints],
    [layout.strips.length, roofPicture.strips],
    [layout.patches.length, roofPicture.patches],
    [layout.handPress.length, roofPicture.handPress],
    [layout.outline.holes.length, roofPicture.openings],
    [voids.length, roofPicture.openVoids]
  ] as const
  return counts.filter(([count]) => count > 0).map(([count, say]) => say(count))
}

/** Zones with their areas, or why there are none; nothing where nobody asked. */
export function zoneWords({ zones, lang, units }: Pick<RoofDrawing, 'zones' | 'lang' | 'units'>, { roofPicture }: Text): readonly string[] {
  if (zones === null) return []
  if (zones.kind === 'unknown') return [roofPicture.zonesUnknown]
  if (zones.kind === 'engineer') return [roofPicture.zonesEngineer]
  const { m, m2 } = drawingAmounts({ lang, units })
  const areas = zones.names
    .filter((name) => (zones.areasM2[name] ?? 0) > 0)
    .map((name) => {
      const widthM = zones.widthsM[name]
      return roofPicture.zone(name, m2(zones.areasM2[name] ?? 0), widthM === undefined ? null : m(widthM * 1000))
    })
  return [roofPicture.zones(zoneStandards[zones.standard].title), ...areas, roofPicture.patternEngineer]
}

/** Everything that the drawing shows, in words. Below 2,000 characters. */
export function roofAlt(drawing: RoofDrawing): string {
  const text = texts[drawing.lang]
  const { roofPicture, frame } = text
  const { m } = drawingAmounts(drawing)
  const [left, low] = cornerOf(drawing)
  const voids = drawing.voids.slice(0, mostVoids).map(({ number, at: [x, y] }) => roofPicture.voidAt(number, m(x - left), m(y - low)))
  const more = drawing.voids.length > mostVoids ? [frame.more(drawing.voids.length - mostVoids)] : []
  const title = roofPicture.title(drawing.site)
  return [
    drawing.invented ? `${title} (${frame.invented})` : title,
    `${roofLine(drawing, text)}, ${roofPicture.northUp}`,
    roofCounts(drawing, text).join(', '),
    zoneWords(drawing, text).join('; '),
    [...voids, ...more].join('; ')
  ]
    .filter((part) => part !== '')
    .map((part) => `${part.charAt(0).toUpperCase()}${part.slice(1)}.`)
    .join(' ')
}

function cornerOf({ layout }: RoofDrawing): Point {
  const { minX, minY } = boxOf(layout.outline.outer)
  return [minX, minY]
}
