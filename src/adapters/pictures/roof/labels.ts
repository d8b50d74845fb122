import { ink, number, paper, tag, widthOf, words } from '../svg.js'

/** Words that want one of some places, the best first: their middle, and whether they stand upright along y. */
export interface Wish {
  readonly at: readonly (readonly [number, number])[]
  readonly text: string
  readonly size: number
  readonly bold?: boolean
  readonly upright?: boolean
  /** What they are drawn in: a disc or a square with a rim, dark with light words, or words alone. */
  readonly in?: 'disc' | 'square' | 'dark' | 'bare'
}

export interface Area {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface Placed {
  readonly svg: readonly string[]
  readonly taken: readonly Area[]
  /** Wishes that found no room. */
  readonly left: number
}

export const nothingPlaced: Placed = { svg: [], taken: [], left: 0 }

/** Draws words where they do not lie over others or what is taken; the earlier ones go first. What finds no room is left out and counted. */
export function place(before: Placed, wishes: readonly Wish[]): Placed {
  const svg = [...before.svg]
  const taken = [...before.taken]
  let left = before.left
  for (const wish of wishes) {
    const found = wish.at.find((at) => !taken.some((other) => overlap(areaOf(wish, at), other)))
    if (found === undefined) left += 1
    else {
      svg.push(drawn(wish, found))
      taken.push(areaOf(wish, found))
    }
  }
  return { svg, taken, left }
}

/** What words cover at a place. */
export function areaOf(wish: Omit<Wish, 'at'>, [x, y]: readonly [number, number]): Area {
  const [wide, high] = wish.upright === true ? [heightOf(wish), widthIn(wish)] : [widthIn(wish), heightOf(wish)]
  return { left: x - wide / 2, top: y - high / 2, right: x + wide / 2, bottom: y + high / 2 }
}

function heightOf({ size, in: within = 'bare' }: Omit<Wish, 'at'>): number {
  return size * (within === 'bare' ? 0.9 : 1.5)
}

function widthIn(wish: Omit<Wish, 'at'>): number {
  const { text, size, in: within = 'bare' } = wish
  return within === 'bare' ? widthOf(text, size) * 0.95 : Math.max(heightOf(wish), widthOf(text, size) + size * 0.5)
}

function overlap(a: Area, b: Area): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
}

function drawn(wish: Wish, at: readonly [number, number]): string {
  const { text, size, bold = false, upright = false, in: within = 'bare' } = wish
  const [x, y] = at
  const fill = within === 'dark' ? paper : ink
  const said = words(x, y + size * 0.36, text, { size, bold, anchor: 'middle', fill })
  const both = `${plateOf(wish, at, within)}${said}`
  return upright ? tag('g', { transform: `rotate(-90 ${number(x)} ${number(y)})` }, both) : both
}

function plateOf(wish: Wish, [x, y]: readonly [number, number], within: 'disc' | 'square' | 'dark' | 'bare'): string {
  const [wide, high] = [widthIn(wish), heightOf(wish)]
  const box = { x: x - wide / 2, y: y - high / 2, width: wide, height: high }
  if (within === 'bare') return tag('rect', { ...box, fill: paper })
  const look = within === 'dark' ? { fill: ink, stroke: paper, 'stroke-width': 3 } : { fill: paper, stroke: ink, 'stroke-width': 2.5 }
  return tag('rect', { ...box, rx: within === 'disc' ? high / 2 : 2, ...look })
}
