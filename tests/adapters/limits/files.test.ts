import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { stringify } from 'yaml'
import { LimitsError, onlySheet, readSheets, resolveKept } from '../../../src/adapters/limits/files.js'
import { commonPractice } from '../../../src/core/limits/common-practice.js'
import { resolveSheet } from '../../../src/core/limits/resolve.js'
import { canonical } from '../../../src/core/log/canonical.js'
import { sha256 } from '../../../src/core/log/sha256.js'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'seamhand-limits-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const put = (name: string, content: string): string => {
  writeFileSync(join(folder, name), content)
  return join(folder, name)
}

const ours = 'id: ours\nversion: 3\ntitle: Ours (invented)\nextends: common-practice\nlimits:\n  humidityPct: { cautionAbove: 80, basis: site }\n'

describe('limits sheets in files', () => {
  it('stand beside the built-in ones', () => {
    put('ours.yaml', ours)

    const sheets = readSheets(folder)
    expect(sheets.ids).toEqual(['common-practice', 'common-practice-us', 'ours'])
    expect(sheets.byId('ours')?.limits.humidity.cautionAbove).toBe(80)
    expect(sheets.byId('ours')?.limits.kitTemperature.min).toBe(21)
    expect(sheets.byId('none')).toBeNull()
  })

  it('may extend each other, in whatever order they are read', () => {
    put('a.yaml', ours.replace('ours', 'child').replace('common-practice', 'parent'))
    put('b.yaml', ours.replace('id: ours', 'id: parent').replace('cautionAbove: 80', 'cautionAbove: 70'))

    expect(readSheets(folder).byId('child')?.limits.humidity.cautionAbove).toBe(80)
  })

  it('are refused with every problem, its file and its path; nothing is half loaded', () => {
    put('bad.yaml', ours.replace('{ cautionAbove: 80, basis: site }', '{ cautionAbove: damp }').concat('  moonPct: { max: 3, basis: site }\n'))
    put('worse.yaml', 'id: Ours!\nversion: x\n')

    expect(() => readSheets(folder)).toThrow(LimitsError)
    try {
      readSheets(folder)
    } catch (error) {
      const { message } = error as Error
      for (const part of ['bad.yaml: limits.humidityPct', 'limits.moonPct', 'worse.yaml: id', 'version']) expect(message).toContain(part)
    }
  })

  it.each([
    ['not YAML', 'a: [1', 'cannot be read'],
    ['a list', '- 1\n', 'broken.yaml'],
    ['empty', '', 'broken.yaml']
  ])('are refused when the file is %s', (_what, content, said) => {
    put('broken.yaml', content)

    expect(() => readSheets(folder)).toThrow(said)
  })

  it('are refused with an id that is taken', () => {
    put('a.yaml', ours)
    put('b.yaml', ours)
    expect(() => readSheets(folder)).toThrow('taken')

    put('b.yaml', ours.replace('id: ours', 'id: common-practice-us'))
    expect(() => readSheets(folder)).toThrow('built-in')
  })

  it('are refused when the folder is not there', () => {
    expect(() => readSheets(join(folder, 'nowhere'))).toThrow('nowhere')
  })

  it('one file alone stands for every site, even a copy of a built-in sheet', () => {
    const path = put('copy.yaml', stringify(commonPractice))

    const sheets = onlySheet(path, null)
    expect(sheets.byId('anything')?.id).toBe('common-practice')
    expect(sheets.byId('anything')?.sha256).toBe(readSheets(null).byId('common-practice')?.sha256)
  })

  it('come back the same from what is kept of them', () => {
    put('ours.yaml', ours)
    const sheet = readSheets(folder).byId('ours')

    expect(resolveKept(JSON.parse(JSON.stringify(sheet?.resolved)))?.sha256).toBe(sheet?.sha256)
    expect(resolveKept({ no: 'sheet' })).toBeNull()
  })
})

describe('a sheet that was kept', () => {
  it('from before a section there is now is still itself, with what is missing filled in', () => {
    const { crew: _since, ...before } = commonPractice

    const sheet = resolveKept(JSON.parse(JSON.stringify(before)))
    expect(sheet?.sha256).toBe(sha256(canonical(before)))
    expect(sheet?.crew.gangs).toBe(1)
  })

  it('now has the hash it was made with', () => {
    expect(resolveKept(JSON.parse(JSON.stringify(commonPractice)))?.sha256).toBe(resolveSheet(commonPractice).sha256)
  })
})
