import { execFileSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '..')
const biome = join(root, 'node_modules', '@biomejs', 'biome', 'bin', 'biome')

/** A tree of its own with our linter's settings, so that nothing is planted in the real one. */
let tree = ''

beforeAll(() => {
  tree = mkdtempSync(join(tmpdir(), 'seamhand-rings-'))
  cpSync(join(root, '.biome.json'), join(tree, '.biome.json'))
  symlinkSync(join(root, 'node_modules'), join(tree, 'node_modules'))
})

afterAll(() => rmSync(tree, { recursive: true }))

/** Which rules of the linter complain of a file with this source at this place. */
function complaints(path: string, source: string): string[] {
  const file = join(tree, path)
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, source)
  try {
    const printed = execFileSync(process.execPath, [biome, 'lint', '--vcs-enabled=false', '--reporter=json', file], {
      cwd: tree,
      stdio: ['ignore', 'pipe', 'ignore']
    })
    return categories(printed.toString())
  } catch (error) {
    return categories(String((error as { stdout: Buffer }).stdout))
  } finally {
    rmSync(file)
  }
}

function categories(printed: string): string[] {
  const { diagnostics } = JSON.parse(printed) as { diagnostics: { category: string }[] }
  return [...new Set(diagnostics.map(({ category }) => category))].sort()
}

const imports = 'lint/style/noRestrictedImports'
const globals = 'lint/style/noRestrictedGlobals'

describe('the rings', () => {
  it.each([
    ['core reads a file', 'src/core/x.ts', "import { readFileSync } from 'node:fs'\nexport const x = readFileSync\n", imports],
    ['core checks with zod', 'src/core/x.ts', "import { z } from 'zod'\nexport const x = z\n", imports],
    ['core speaks', 'src/core/x.ts', "import { handle } from '../bot/handle.js'\nexport const x = handle\n", imports],
    ['core speaks, in types only', 'src/core/x.ts', "import type { Ask } from '../bot/ask.js'\nexport type X = Ask\n", imports],
    ['core touches', 'src/core/rules/x.ts', "import { createLog } from '../../adapters/log.js'\nexport const x = createLog\n", imports],
    [
      'core takes a package beside its wrapper',
      'src/core/physics/x.ts',
      "import { getPosition } from 'suncalc'\nexport const x = getPosition\n",
      imports
    ],
    ['core has a clock', 'src/core/x.ts', 'export const x = () => Date.now()\n', globals],
    ['core asks the network', 'src/core/x.ts', "export const x = () => fetch('https://example.org')\n", globals],
    ['bot touches', 'src/bot/x.ts', "import { createLog } from '../adapters/log.js'\nexport const x = createLog\n", imports],
    ['bot knows Bolt', 'src/bot/x.ts', "import { App } from '@slack/bolt'\nexport const x = App\n", imports],
    ['bot has a clock', 'src/bot/x.ts', 'export const x = () => new Date()\n', globals],
    ['one adapter knows another', 'src/adapters/store/x.ts', "import { sources } from '../weather/index.js'\nexport const x = sources\n", imports],
    [
      'an adapter knows another from a folder below',
      'src/adapters/store/migrations/x.ts',
      "import { sources } from '../../weather/index.js'\nexport const x = sources\n",
      imports
    ],
    [
      'an adapter knows the settings',
      'src/adapters/store/x.ts',
      "import { readConfig } from '../../config.js'\nexport const x = readConfig\n",
      imports
    ],
    ['an adapter wires', 'src/adapters/store/x.ts', "import { serve } from '../../wiring/serve.js'\nexport const x = serve\n", imports],
    ['wiring knows main', 'src/wiring/x.ts', "import { main } from '../main.js'\nexport const x = main\n", imports],
    ['an adapter reads the environment', 'src/adapters/store/x.ts', 'export const x = process.env.HOME\n', 'lint/style/noProcessEnv'],
    ['settings know the trade', 'src/config.ts', "import { rules } from './core/rules/index.js'\nexport const x = rules\n", imports],
    ['a default export', 'src/core/x.ts', 'export default 1\n', 'lint/style/noDefaultExport'],
    ['anything goes', 'src/core/x.ts', 'export const x = (y: any) => y\n', 'lint/suspicious/noExplicitAny']
  ])('are held: %s', (_story, path, source, rule) => {
    expect(complaints(path, source)).toContain(rule)
  })

  it.each([
    [
      'core uses luxon and itself',
      'src/core/y.ts',
      "import { DateTime } from 'luxon'\nimport { round6 } from './units.js'\nexport const y = [DateTime, round6]\n"
    ],
    [
      'bot uses core, zod and its own',
      'src/bot/y.ts',
      "import { z } from 'zod'\nimport { round6 } from '../core/units.js'\nimport { x } from './views/x.js'\nexport const y = [z, round6, x]\n"
    ],
    [
      'an adapter uses core, bot and packages',
      'src/adapters/store/y.ts',
      "import { join } from 'node:path'\nimport { x } from '../../bot/ports.js'\nimport { w } from '../../core/weather/hours.js'\nexport const y = [join, x, w]\n"
    ]
  ])('let through what belongs: %s', (_story, path, source) => {
    expect(complaints(path, source)).toEqual([])
  })

  it('see a circle of imports, types among them', () => {
    const other = join(tree, 'src/core/b.ts')
    mkdirSync(dirname(other), { recursive: true })
    writeFileSync(other, "import type { A } from './a.js'\nexport type B = A\n")

    expect(complaints('src/core/a.ts', "import type { B } from './b.js'\nexport type A = B | 1\n")).toContain('lint/suspicious/noImportCycles')
  })
})
