import type { How } from './how.js'
import { numeral } from './number.js'

const sixteenths = 16
/** From this many inches on: feet and inches. */
const feetFrom = 36
/** Below this, sixteenths say too little. */
const fineBelow = 1 / 8

/** Inches as a roofer reads a tape: `1 5/8 in`, `7 ft 0 5/8 in`; decimals below 1/8 in. */
export function tape(inches: number, how: How, space: string): string {
  const size = Math.abs(inches)
  if (size > 0 && size < fineBelow) return `${numeral(inches, 3, how)}${space}in`
  const sign = inches < 0 ? '-' : ''
  const steps = Math.round(size * sixteenths)
  const [whole, part] = [Math.floor(steps / sixteenths), steps % sixteenths]
  if (whole < feetFrom) return `${sign}${mixed(whole, part)}${space}in`
  return `${sign}${numeral(Math.floor(whole / 12), 0, how)}${space}ft ${mixed(whole % 12, part, true)}${space}in`
}

function mixed(whole: number, part: number, keepZero = false): string {
  if (part === 0) return String(whole)
  const divisor = part % 8 === 0 ? 8 : part % 4 === 0 ? 4 : part % 2 === 0 ? 2 : 1
  const fraction = `${part / divisor}/${sixteenths / divisor}`
  return whole === 0 && !keepZero ? fraction : `${whole} ${fraction}`
}

/** Feet and whole inches up to 100 ft, then feet; none at all is no feet, as what it stands beside is in feet. */
export function feet(metres: number, how: How, space: string): string {
  const inches = Math.round(Math.abs(metres) / 0.0254)
  const sign = metres < 0 && inches > 0 ? '-' : ''
  if (inches >= 1200) return `${numeral(metres / 0.3048, 0, how)}${space}ft`
  const [ft, rest] = [Math.floor(inches / 12), inches % 12]
  if (inches === 0) return `0${space}ft`
  if (ft === 0) return `${sign}${rest}${space}in`
  return rest === 0 ? `${sign}${ft}${space}ft` : `${sign}${ft}${space}ft ${rest}${space}in`
}
