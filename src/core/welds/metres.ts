import type { LaidData } from '../log/data.js'

/** Metres welded by name of welder, as one entry tells them. */
export function metresByWelder({ robotM, handM, othersM }: LaidData): ReadonlyMap<string, number> {
  const told = [['robot', robotM] as const, ['hand', handM] as const, ...Object.entries(othersM ?? {})]
  return new Map(told.flatMap(([name, metres]) => (metres === undefined ? [] : [[name, metres] as const])))
}

/** All metres welded, as one entry tells them. */
export function weldedM(laid: LaidData): number {
  return [...metresByWelder(laid).values()].reduce((sum, metres) => sum + metres, 0)
}
