import type { Along, Layout } from './layout.js'
import { type Point, type Region, turned } from './polygon.js'

type Body = Pick<Layout, 'pieces' | 'seams' | 'joints' | 'strips' | 'patches' | 'handPress'>

/** From the frame of the sheets (x along them) to that of the roof. */
export function onPlan(body: Body, along: Along): Body {
  if (along === 'x') return body
  return {
    pieces: body.pieces.map((piece) => ({ ...piece, region: region(piece.region) })),
    seams: body.seams.map((seam) => ({ ...seam, from: point(seam.from), to: point(seam.to) })),
    joints: body.joints.map((joint) => ({ ...joint, gap: turned(joint.gap) })),
    strips: body.strips.map((strip) => ({ ...strip, region: region(strip.region) })),
    patches: body.patches.map((patch) => ({ ...patch, at: point(patch.at), region: region(patch.region) })),
    handPress: body.handPress.map((place) => ({ ...place, at: point(place.at) }))
  }
}

function region(polygons: Region): Region {
  return polygons.map(turned)
}

function point([x, y]: Point): Point {
  return [y, x]
}
