import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { subcommands } from '../../../src/adapters/terminal/index.js'
import { terminalUsages, wantsUsage } from '../../../src/adapters/terminal/usages.js'
import { program } from './run.js'

describe('NAME --help', () => {
  it.each(Object.keys(subcommands) as (keyof typeof subcommands)[])('names every option of %s', (name) => {
    const source = readFileSync(`src/adapters/terminal/${name}.ts`, 'utf8')
    const options = [...source.matchAll(/^\s*(?:const options = \{ )?'?([a-z-]+)'?: \{ type: '|, ([a-z]+): \{ type: '/gm)].map(
      (found) => found[1] ?? found[2]
    )
    expect(options.length).toBeGreaterThan(0)
    for (const option of options) expect(terminalUsages[name]).toContain(`--${option}`)
  })

  it('is an option, not a word of the question', () => {
    expect([wantsUsage(['--help']), wantsUsage(['--json', '-h']), wantsUsage(['--', '--help']), wantsUsage(['help'])]).toEqual([
      true,
      true,
      false,
      false
    ])
  })

  it('is printed and opens nothing', async () => {
    const { code, out, err } = await program(['ask', '--help', '--data', '/nowhere/at/all'])
    expect([code, err]).toEqual([0, ''])
    expect(out).toMatch(/^seamhand ask \[--json\][\s\S]*\nseamhand ask --json --lines/)
    expect((await program(['frob', '--help'])).code).toBe(2)
  })
})
