import type { RoofPictureWords } from '../../../bot/text/roof-picture-words.js'
import type { RoofDrawing } from '../../../core/sheets/roof-drawing.js'
import { ink, paper, tag, widthOf, words } from '../svg.js'
import type { Frame } from './frame.js'
import { nothingPlaced, place } from './labels.js'
import { cross } from './plan.js'

/** A sign of the drawing with what it stands for; null: words alone. */
interface Entry {
  readonly sign: ((x: number, y: number) => string) | null
  readonly said: string
}

const signWide = 46

/** What the signs on the plan stand for, in rows below it. */
export function legendOf(
  frame: Frame,
  top: number,
  { layout, voids }: RoofDrawing,
  text: RoofPictureWords,
  more: readonly string[]
): { readonly svg: string; readonly bottom: number } {
  const entries: readonly Entry[] = [
    ...(voids.length === 0 ? [] : [{ sign: label('7', true, frame), said: text.openVoids(voids.length) }]),
    ...(layout.strips.length === 0 ? [] : [{ sign: hatched, said: text.strips(layout.strips.length) }]),
    ...(layout.patches.length === 0 ? [] : [{ sign: label('1', false, frame), said: text.patches(layout.patches.length) }]),
    ...(layout.handPress.length === 0
      ? []
      : [{ sign: (x: number, y: number) => cross(x + 18, y, 8), said: text.handPress(layout.handPress.length) }]),
    ...(layout.outline.holes.length === 0 ? [] : [{ sign: crossedOut, said: text.openings(layout.outline.holes.length) }]),
    ...more.map((said) => ({ sign: null, said }))
  ]
  return rows(frame, top, entries)
}

function rows(frame: Frame, top: number, entries: readonly Entry[]): { readonly svg: string; readonly bottom: number } {
  const svg: string[] = []
  const [first, last, step] = [24, frame.width - 24, frame.label * 1.7]
  let [x, y] = [first, top + frame.label]
  for (const { sign, said } of entries) {
    const wide = (sign === null ? 0 : signWide) + widthOf(said, frame.small) * 0.92 + 30
    if (x > first && x + wide > last) [x, y] = [first, y + step]
    if (sign !== null) svg.push(sign(x, y - frame.small * 0.34))
    svg.push(words(x + (sign === null ? 0 : signWide), y, said, { size: frame.small }))
    x += wide
  }
  return { svg: svg.join(''), bottom: entries.length === 0 ? top : y + frame.label * 0.6 }
}

function label(text: string, dark: boolean, { small }: Frame): (x: number, y: number) => string {
  return (x, y) => place(nothingPlaced, [{ at: [[x + 20, y]], text, size: small * 0.86, bold: dark, in: dark ? 'dark' : 'disc' }]).svg.join('')
}

function hatched(x: number, y: number): string {
  return tag('rect', { x, y: y - 7, width: 38, height: 14, fill: 'url(#strip)', stroke: ink, 'stroke-width': 2 })
}

function crossedOut(x: number, y: number): string {
  const box = tag('rect', { x: x + 3, y: y - 13, width: 32, height: 26, fill: paper, stroke: ink, 'stroke-width': 3 })
  return `${box}${tag('path', { d: `M${x + 3} ${y - 13}L${x + 35} ${y + 13}M${x + 3} ${y + 13}L${x + 35} ${y - 13}`, stroke: ink, 'stroke-width': 2 })}`
}
