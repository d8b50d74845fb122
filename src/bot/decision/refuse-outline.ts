import type { OutlineProblem } from '../../core/sheets/outline.js'
import type { SizesProblem } from '../../core/sheets/sizes.js'
import { type Done, refuse } from '../context.js'
import type { CornerSaid, OutlineSaid } from '../words/said.js'

/** What is wrong with an outline, at the words that placed it. */
export function refuseOutline(problem: OutlineProblem, said: OutlineSaid): Done {
  const rings = [said.outer, ...said.openings]
  const wordOf = (ring: number, corner: number): string | null => {
    const corners = rings[ring] as readonly CornerSaid[]
    return corners[corner % corners.length]?.word ?? null
  }
  const labelOf = (ring: number) => (ring === 0 ? 'outline' : 'opening')
  switch (problem.what) {
    case 'corners-many':
      return refuse('out-of-range', null, { label: 'corner', max: problem.most, state: 'too-large' })
    case 'area-large':
      return refuse('out-of-range', wordOf(0, 0), { label: 'area', max: problem.mostM2, unit: 'm2', state: 'too-large' })
    case 'far':
      return refuse('out-of-range', wordOf(problem.ring, problem.corner), { label: 'corner', state: 'too-large' })
    case 'corners-few':
      return refuse('inconsistent', wordOf(problem.ring, 0), { label: labelOf(problem.ring), state: 'corners-few' })
    case 'side-short':
    case 'flat':
      return refuse('inconsistent', wordOf(problem.ring, problem.corner), { label: labelOf(problem.ring), state: problem.what })
    case 'outside':
    case 'within-opening':
      return refuse('inconsistent', wordOf(problem.ring, 0), { label: 'opening', state: problem.what })
    default: {
      const [a, b] = [wordOf(problem.a.ring, problem.a.corner), wordOf(problem.b.ring, problem.b.corner)]
      return refuse('inconsistent', b, { label: labelOf(problem.b.ring), ...(a === null || a === b ? {} : { other: a }), state: problem.what })
    }
  }
}

/** A size that cannot be laid out, by its label. */
export function refuseSizes({ what, min, max }: SizesProblem): Done {
  const label = { 'lap-wide': 'lap', 'roll-short': 'roll', 'gap-wide': 'gap', 'patch-layers': 'patch' }[what]
  return refuse('inconsistent', null, { label, min, max, ...(what === 'patch-layers' ? {} : { unit: 'mm' }), state: what })
}
