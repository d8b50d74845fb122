import { readFile } from 'node:fs/promises'
import { readOutline } from '../adapters/outline/index.js'
import { Stop } from '../adapters/terminal/io.js'
import type { Units } from '../bot/answer.js'
import type { OutlineSaid } from '../bot/words/said.js'
import type { OutlineFileProblem } from '../core/sheets/outline-file.js'

const said: Readonly<Record<OutlineFileProblem['what'], string>> = {
  'too-large': 'too large',
  'not-text': 'not a text file in UTF-8',
  'not-json': 'not whole JSON',
  'not-dxf': 'not a DXF drawing',
  'no-outline': 'no outline in it',
  'several-outlines': 'several outlines, one is wanted',
  'not-closed': 'an outline that is not closed',
  curve: 'a curve, only straight edges are taken',
  'bad-number': 'not a number',
  unit: 'a unit that is not known'
}

/** The outline in a file, or a Stop that says what is wrong with it and where. */
export async function outlineFrom(file: string, units: Units): Promise<OutlineSaid> {
  const bytes = await readFile(file).catch(() => {
    throw new Stop(`${file} cannot be read`, 2, 'bad-option')
  })
  const seen = readOutline(bytes, units === 'us' ? 'ft' : 'm')
  if (seen.ok) return { outer: seen.outer, openings: seen.openings }
  const { what, word } = seen.problem
  throw new Stop([`outline ${file}`, said[what], word].filter((part) => part !== '').join(': '), 2, 'bad-option')
}
