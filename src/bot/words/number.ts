import { matchAt } from './match.js'
import { Refused } from './refused.js'

const vulgar = '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'
const startAt = new RegExp(`[-−+]?[.,]?[\\p{Nd}${vulgar}]`, 'uy')
const runAt = /\p{Nd}+(?:[.,/⁄:]\p{Nd}+)*/uy
const joinedAt = new RegExp(`(?:[ \\u00a0\\u202f]{1,3}|-)(\\d{1,9}[/⁄]\\d{1,9}|[${vulgar}])(?!\\p{N}|[.,/⁄:]\\p{Nd})`, 'uy')
/** What may not follow a number: more digits of any kind, or a dash with digits (a range, a date). */
const tailAt = /\p{N}|[.,/⁄:]\p{Nd}|[-−–]\p{Nd}/uy

export interface NumberRead {
  readonly value: number
  readonly end: number
}

export function numberStartsAt(text: string, pos: number): boolean {
  return matchAt(startAt, text, pos) !== null
}

function badNumber(text: string, pos: number): Refused {
  return new Refused('bad-number', matchAt(/[^\s;!?]+/y, text, pos)?.[0].replace(/[.,:]+$/, '') ?? '')
}

/** A fraction `1/2`, `1⁄2` or `½`; null for a zero denominator. */
function fraction(text: string): number | null {
  const [above, below] = text.normalize('NFKD').split(/[/⁄]/).map(Number)
  return above === undefined || below === undefined || !(below > 0) ? null : above / below
}

/** Digits with at most one separator, or a fraction; null for anything else. */
function plain(body: string, raw: string): number | null {
  if (/^\d{1,15}$/.test(body)) return Number(body)
  if (/^\d{1,9}[/⁄]\d{1,9}$/.test(body)) return fraction(body)
  if (!/^\d{1,15}[.,]\d{1,15}$/.test(body)) return null
  if (/^[1-9]\d{0,2}[.,]\d{3}$/.test(body)) throw new Refused('ambiguous-number', raw)
  return Number(body.replace(',', '.'))
}

/**
 * Reads the number that starts at `pos` (see `numberStartsAt`). A `count` takes no fraction after a space,
 * so that in `course 4 1/2 in` the fraction is the next value.
 */
export function readNumber(text: string, pos: number, count = false): NumberRead {
  const negative = text[pos] === '-' || text[pos] === '−'
  const from = negative ? pos + 1 : pos
  const body = matchAt(runAt, text, from)?.[0] ?? ''
  let end = from + body.length
  let value = body === '' ? 0 : plain(body, text.slice(pos, end))
  const whole = body === '' || /^\d+$/.test(body)
  const glued = vulgar.includes(text[end] ?? ' ') ? (text[end] as string) : null
  const joined = glued === null && body !== '' && whole && !count ? matchAt(joinedAt, text, end) : null
  if (glued !== null || joined) {
    const part = whole ? fraction(glued ?? joined?.[1] ?? '') : null
    value = part === null || value === null ? null : value + part
    end += glued?.length ?? joined?.[0].length ?? 0
  }
  if (value === null || end === from || matchAt(tailAt, text, end)) throw badNumber(text, pos)
  return { value: negative ? -value : value, end }
}
