import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { subcommands } from '../src/adapters/terminal/index.js'
import { sources } from '../src/adapters/weather/sources.js'
import { freeCommands, siteCommands } from '../src/bot/commands/index.js'
import { forms } from '../src/bot/forms/index.js'
import { texts } from '../src/bot/text/index.js'
import { usages } from '../src/bot/text/usages.js'
import { settingNames } from '../src/config.js'
import { engineVersion } from '../src/core/engine.js'
import { formulas } from '../src/core/formulas/index.js'
import { rules } from '../src/core/rules/index.js'

const root = resolve(import.meta.dirname, '..')
const read = (path: string) => readFileSync(join(root, path), 'utf8')
const readme = read('README.md')
const developers = read('DEVELOPERS.md')

/** Names of the files of a folder, without their ending. */
function filesOf(folder: string, ending = '.ts'): string[] {
  return readdirSync(join(root, folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length))
}

function everyFile(folder: string): string[] {
  return readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name)
    return statSync(join(root, path)).isDirectory() ? everyFile(path) : [path]
  })
}

/** Files beside the rules that are no rules: what rules are made of. */
const ruleParts = new Set(['index', 'rule', 'judge', 'interval', 'statements', 'minutes-since', 'reading-to-take'])

describe('the repository', () => {
  it('has the top level that was given, and what tools force there', () => {
    const given = ['DEVELOPERS.md', 'LICENSE', 'README.md', 'manifest.yaml', 'package-lock.json', 'package.json', 'src', 'tests', 'tsconfig.json']
    const made = ['node_modules', 'dist', '.seamhand']
    const seen = readdirSync(root).filter((name) => !name.startsWith('.') && !made.includes(name))

    expect(seen.filter((name) => !given.includes(name))).toEqual([])
  })

  it('opens its README with the job, then the two commands', () => {
    const [, job = ''] = readme.split('\n\n')
    expect(job).toMatch(/foam adhesive.*hot air.*strips.*probe/s)
    expect(readme.indexOf('npm ci --omit=dev && npm start')).toBeGreaterThan(0)
    expect(readme.indexOf('npm ci && npm test')).toBeGreaterThan(readme.indexOf('npm ci --omit=dev && npm start'))
  })

  it('has every rule in its map, with a test and a source', () => {
    const files = filesOf('src/core/rules')
      .filter((name) => !ruleParts.has(name))
      .sort()
    expect(Object.keys(rules).sort()).toEqual(files)
    const tests = filesOf('tests/core/rules', '.test.ts')
    for (const [id, rule] of Object.entries(rules)) {
      expect(tests, id).toContain(id)
      expect(rule.source.length, id).toBeGreaterThan(10)
      expect(developers, id).toMatch(new RegExp(`\\b${id}\\b`))
    }
  })

  it('has every command in its map, its usage and its README row', () => {
    const asked = new Set([...Object.keys(siteCommands), ...Object.keys(freeCommands)].map((name) => name.split(' ')[0]))
    expect([...asked].sort()).toEqual(Object.keys(usages).sort())
    for (const name of asked) expect(readme, name).toMatch(new RegExp(`[\`/ ]${name}\\b`))
  })

  it('has every form, weather source and formula in its map', () => {
    const formParts = ['index', 'form', 'form-id', 'fields']
    expect(Object.keys(forms).sort()).toEqual(
      filesOf('src/bot/forms')
        .filter((name) => !formParts.includes(name))
        .sort()
    )
    const folders = readdirSync(join(root, 'src/adapters/weather')).filter(
      (name) => statSync(join(root, 'src/adapters/weather', name)).isDirectory() && name !== 'sample'
    )
    expect(Object.keys(sources).sort()).toEqual(folders.sort())
    for (const name of Object.keys(sources)) expect(readme).toContain(`\`${name}\``)
    for (const [name, formula] of Object.entries(formulas)) {
      expect(formula.name).toBe(name)
      expect(formula.source.length, name).toBeGreaterThan(5)
    }
  })

  it('names every subcommand and every setting in the README, and no other setting', () => {
    for (const name of Object.keys(subcommands)) expect(readme, name).toMatch(new RegExp(`seamhand -- ${name}|run -s ${name}|npm start`))
    const table = readme.slice(readme.indexOf('## Settings'), readme.indexOf('## Weather'))
    const named = [...table.matchAll(/`([A-Z][A-Z_]+)`/g)].map((match) => match[1] as string)
    expect([...new Set(named)].sort()).toEqual([...settingNames].sort())
  })

  it('has the version of the engine in the package', () => {
    expect((JSON.parse(read('package.json')) as { version: string }).version).toBe(engineVersion)
  })

  it('pins every dependency, and locks it without an address', () => {
    const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<string, Record<string, string>>
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies })) expect(version, name).toMatch(/^\d/)
    expect(read('package-lock.json')).not.toMatch(/"resolved": "(?!https:\/\/registry\.npmjs\.org)/)
    for (const name of Object.keys(dependencies ?? {})) expect(developers, name).toContain(name.startsWith('@types/') ? '@types/*' : name)
  })

  it('says the same things in every language', () => {
    const shape = (value: unknown): unknown =>
      typeof value === 'object' && value !== null
        ? Object.fromEntries(
            Object.entries(value)
              .sort(([a], [b]) => (a < b ? -1 : 1))
              .map(([key, each]) => [key, shape(each)])
          )
        : typeof value
    expect(shape(texts.es)).toEqual(shape(texts.en))
    expect(shape(texts.fr)).toEqual(shape(texts.en))
  })

  it('keeps its files short and its names in one style', () => {
    const long = everyFile('src').filter((path) => path.endsWith('.ts') && read(path).split('\n').length > 260)
    expect(long).toEqual([])
    for (const path of everyFile('src')) expect(path).toMatch(/^[a-z0-9/.-]+$/)
  })

  it('names no path of a machine and no tool of the workplace', () => {
    for (const path of [...everyFile('src'), 'README.md', 'DEVELOPERS.md', 'package.json'])
      expect(read(path), path).not.toMatch(/\/work\/|\/tmp\/|CONTRACT|DESIGN §/)
  })
})
