import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { texts } from '../../../src/bot/text/index.js'
import { readWords } from '../../../src/bot/words/read.js'
import { iso } from '../../support/instant.js'

const systems = ['metric', 'us'] as const
const read = (text: string, units: (typeof systems)[number]) => readWords(text, { units, zone: 'America/Chicago', now: iso('2026-05-04T17:00:00Z') })

/** Every question of the README that is asked of `ask` in whatever units, and every message in backticks that stands whole in its table of commands. */
function ofReadme(): readonly string[] {
  const readme = readFileSync('README.md', 'utf8')
  const asked = [...readme.matchAll(/npm run -s ask -- (.*)"([^"\n]+)"$/gm)]
    .filter((found) => !found[1]?.includes('--units'))
    .map((found) => found[2] as string)
  const said = [...readme.matchAll(/"text": "([^"]+)"/g)].map((found) => found[1] as string)
  const commands = readme.slice(readme.indexOf('## Commands'), readme.indexOf('## From the terminal'))
  const rows = [...commands.matchAll(/`(\/[^`…]+)`/g)].map((found) => found[1] as string)
  // Words in capitals stand for what a person fills in; `form`, and some commands alone, open a form.
  return [...asked, ...said, ...rows.filter((row) => !/\b[A-Z]{3,}|^\/[a-z]+ form$|^\/(seamhand )?[a-z]+$/.test(row))]
}

describe('every example can be typed as it stands, on a site of either system', () => {
  it('of help, in each language', () => {
    for (const units of systems) {
      for (const { usages } of Object.values(texts)) {
        for (const { example } of Object.values(usages)) expect([units, example, read(example, units).ok]).toEqual([units, example, true])
      }
    }
  })

  it('of the README', () => {
    const all = ofReadme()
    expect(all).toContain('/strip 2 m gap 6 mm')
    expect(all.length).toBeGreaterThan(20)
    for (const units of systems) for (const text of all) expect([units, text, read(text, units).ok]).toEqual([units, text, true])
  })

  it('means the same strip in both, since its numbers have units', () => {
    const [metric, us] = systems.map((units) => read('/strip 2 m gap 6 mm', units))
    expect(us).toMatchObject({ said: { strip: { widthM: 2, gapMm: 6 } } })
    expect(us).toEqual(metric)
  })
})
