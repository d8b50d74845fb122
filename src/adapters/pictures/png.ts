import { createRequire } from 'node:module'
import { Resvg } from '@resvg/resvg-js'
import { opaquePng } from './opaque-png.js'
import { family } from './svg.js'

const { resolve } = createRequire(import.meta.url)

/** Without a font file the renderer leaves out all words and says nothing. */
const fontFiles = [resolve('@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf'), resolve('@expo-google-fonts/inter/700Bold/Inter_700Bold.ttf')]

/** SVG → PNG in its own size, on white, with our fonts alone: the same pixels on every machine, the same bytes on one. Throws for what is no SVG. */
export function toPng(svg: string): Buffer {
  const font = { fontFiles, loadSystemFonts: false, defaultFontFamily: family, sansSerifFamily: family }
  const { pixels, width, height } = new Resvg(svg, { font, background: '#ffffff', logLevel: 'off' }).render()
  return opaquePng(pixels, width, height)
}
