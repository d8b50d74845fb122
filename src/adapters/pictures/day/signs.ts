import type { Outcome } from '../../../core/outcome.js'
import { ink, paper, tag } from '../svg.js'

/** ✓ △ ? ✕ as strokes within −1 … 1, since a font may lack them. */
const strokes: Readonly<Record<Outcome, string>> = {
  go: 'M-0.6 0.05L-0.15 0.5L0.65 -0.5',
  caution: 'M0 -0.58L0.56 0.4L-0.56 0.4Z',
  unknown: 'M-0.36 -0.3A0.37 0.37 0 1 1 0.14 0.06Q0 0.14 0 0.32M0 0.62L0 0.66',
  'no-go': 'M-0.48 -0.48L0.48 0.48M0.48 -0.48L-0.48 0.48'
}

/** The sign of an outcome on a disc of its own, so that it can be read over any hatch. */
export function sign(outcome: Outcome, x: number, y: number, radius: number): string {
  const disc = tag('circle', { cx: 0, cy: 0, r: 1, fill: paper, stroke: ink, 'stroke-width': 0.14 })
  const path = tag('path', {
    ...{ d: strokes[outcome], fill: 'none', stroke: ink, 'stroke-width': 0.26 },
    ...{ 'stroke-linecap': 'round', 'stroke-linejoin': 'round', 'data-sign': outcome }
  })
  return tag('g', { transform: `translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${radius.toFixed(2)})` }, [disc, path])
}
