import type { VoidState } from '../log/states/void.js'

/** Whether the log says how the last repair of a void was done. */
export function stepsSaid({ repair }: Pick<VoidState, 'repair'>): boolean {
  return repair !== undefined && (repair.patched || repair.steps.length > 0)
}
