import type { SiteSettings } from '../site.js'

interface Place {
  readonly course: number
  readonly distanceM: number | null
}

/**
 * What of a place cannot be on a roof of a known size: more courses than sheets go side by side along its longer side, or farther
 * along a course than that side is long. `sheetM`, `lapMm`: width and lap of the sheets. Nothing for a roof whose size is not known.
 */
export function offRoof({ course, distanceM }: Place, roof: SiteSettings['roof'], sheetM: number, lapMm: number) {
  if (roof === null) return {}
  const sideM = Math.max(roof.widthM, roof.depthM)
  const step = sheetM - lapMm / 1000
  const most = step > 0 ? Math.max(1, Math.ceil((sideM - lapMm / 1000) / step)) : null
  return {
    ...(most !== null && course > most ? { mostCourses: most } : {}),
    ...(distanceM !== null && distanceM > sideM ? { longestM: sideM } : {})
  }
}
