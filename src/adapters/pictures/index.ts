import { drawDay } from './day.js'

/** Every picture: its data → SVG. A new one is one file and one line here. */
export const pictures = { day: drawDay } as const
