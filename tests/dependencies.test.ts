import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'

interface Checked {
  readonly licenses: string | readonly string[]
}

/** Lists the licences of what is installed: license-checker-rseidelsohn. */
const { init } = createRequire(import.meta.url)('license-checker-rseidelsohn') as {
  init(options: object, done: (error: Error | null, found: Record<string, Checked>) => void): void
}

const root = new URL('..', import.meta.url).pathname

/** Licences that let anybody use, change and hand on, with no more than a notice; the font's is the SIL Open Font License. */
const allowed = new Set([
  ...['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BlueOak-1.0.0', 'BSL-1.0', 'MPL-2.0', 'OFL-1.1'],
  ...['Unlicense', 'CC0-1.0', 'Zlib', 'WTFPL']
])
/** Packages whose licence is a text without a name, read by hand. */
const read: Readonly<Record<string, string>> = { suncalc: 'BSD-2-Clause', 'png-js': 'MIT' }

/** `(MIT OR X)` is fine where one of them is, `A AND B` where all are. */
function isAllowed(licence: string): boolean {
  return licence
    .replace(/[()]/g, '')
    .split(' OR ')
    .some((one) => one.split(' AND ').every((part) => allowed.has(part.trim())))
}

describe('packages', () => {
  it('that production installs have licences that let anybody use them', async () => {
    const found = await new Promise<Record<string, Checked>>((resolve, reject) => {
      init({ start: root, production: true, excludePrivatePackages: true }, (error, all) => (error ? reject(error) : resolve(all)))
    })
    const names = Object.keys(found)
    expect(names.length).toBeGreaterThan(30)
    const others = names.flatMap((name) => {
      const licences = [read[name.replace(/@[^@]*$/, '')] ?? found[name]?.licenses ?? 'none'].flat()
      return licences.every(isAllowed) ? [] : [`${name}: ${licences.join(', ')}`]
    })
    expect(others).toEqual([])
  })

  it('are named somewhere in the code that needs them', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as Record<string, Record<string, string>>
    const code = (folder: string) =>
      readdirSync(root + folder, { recursive: true, encoding: 'utf8' })
        .filter((file) => /\.(ts|mjs|json)$/.test(file) && !file.startsWith('fixtures'))
        .map((file) => readFileSync(`${root}${folder}/${file}`, 'utf8'))
        .join('\n')
    const [src, tests] = [code('src'), code('tests')]
    const named = (name: string, text: string) => text.includes(`'${name}`) || text.includes(`"${name}`) || text.includes(`/${name}/`)
    // Compilers and checkers are run by name; types belong to a package or to Node.
    const tools = ['typescript', '@types/node', '@biomejs/biome', 'knip']
    const unused = (all: Record<string, string> | undefined, text: string) =>
      Object.keys(all ?? {}).filter((name) => !tools.includes(name) && !named(name.replace('@types/', ''), text))
    expect(unused(dependencies, src)).toEqual([])
    expect(unused(devDependencies, tests)).toEqual([])
  })
})
