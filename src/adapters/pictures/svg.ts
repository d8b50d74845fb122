// Pieces of SVG. Every text and every attribute passes `escapeXml`; every number is cut to two decimals, so that the same
// picture is the same bytes on every machine.

export type Attributes = Readonly<Record<string, string | number>>

/** A colour for writing and lines, one for the ground, and what lies between them: dark on light, readable in the sun. */
export const ink = '#111111'
export const paper = '#ffffff'
export const faint = '#c4c4c4'
export const family = 'Inter'

const notXml = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu
const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Text as XML 1.0 takes it, in elements and in quoted attributes: what no XML may hold is left out. */
export function escapeXml(text: string): string {
  return text.replace(notXml, '').replace(/[&<>"']/g, (sign) => entities[sign] ?? '')
}

export function tag(name: string, attributes: Attributes, children: string | readonly string[] = ''): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${typeof value === 'number' ? number(value) : escapeXml(value)}"`)
  const inside = typeof children === 'string' ? children : children.join('')
  return inside === '' ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${inside}</${name}>`
}

export function number(value: number): string {
  const cut = Math.round(value * 100) / 100
  return String(cut === 0 ? 0 : cut)
}

export interface WordStyle {
  readonly size: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly bold?: boolean
  readonly fill?: string
  /** A rim in the colour of the ground keeps words readable over lines. */
  readonly rim?: boolean
}

/** One line of words with its baseline at y. */
export function words(x: number, y: number, text: string, style: WordStyle): string {
  const { size, anchor = 'start', bold = false, fill = ink, rim = false } = style
  const rimmed = rim ? { stroke: paper, 'stroke-width': 8, 'stroke-linejoin': 'round', 'paint-order': 'stroke' } : {}
  const attributes = { x, y, 'font-family': family, 'font-size': size, 'font-weight': bold ? 700 : 400, 'text-anchor': anchor, fill, ...rimmed }
  return tag('text', attributes, escapeXml(text))
}

/** About as wide as words come out, on the wide side: 0.6 em a letter. */
export function widthOf(text: string, size: number): number {
  return [...text].length * size * 0.6
}

/** Words cut to a width, with a sign that they were. */
export function fitted(text: string, size: number, width: number): string {
  const letters = [...text]
  const most = Math.max(1, Math.floor(width / (size * 0.6)))
  return letters.length <= most ? text : `${letters.slice(0, most - 1).join('')}…`
}

/** Words on a plate in the colour of the ground, where lines run behind them. */
export function plate(x: number, y: number, text: string, fontSize: number): string {
  const wide = widthOf(text, fontSize) + 16
  const ground = tag('rect', { x: x - wide / 2, y: y - fontSize, width: wide, height: fontSize * 1.35, fill: paper })
  return `${ground}${words(x, y, text, { size: fontSize, anchor: 'middle', bold: true })}`
}

export function straight(x1: number, y1: number, x2: number, y2: number, stroke: string, width: number): string {
  return tag('line', { x1, y1, x2, y2, stroke, 'stroke-width': width })
}
