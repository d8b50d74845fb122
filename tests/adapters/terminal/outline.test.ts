import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { numbersOf } from '../../support/seamhand.js'
import { askJson, folders } from './run.js'

const folder = folders()
const at = ['--at', '2026-05-04T10:00:00Z', '--weather', 'none'] as const

function fileOf(data: string, text: string): string {
  const file = join(data, 'roof.csv')
  writeFileSync(file, text)
  return file
}

describe('seamhand ask --outline', () => {
  it('lays sheets on the roof of a file, in the units of the person', async () => {
    const data = folder()
    const file = fileOf(data, '0,0\n24,0\n24,36\n0,36\n\n5,9\n7,9\n7,10.2\n5,10.2\n')
    const metric = await askJson(['--data', data, ...at, '--outline', file, 'sheets'])
    const us = await askJson(['--data', data, ...at, '--outline', file, '--units', 'us', 'sheets'])

    expect(numbersOf(metric.reply).areaM2).toBeCloseTo(861.6, 6)
    expect(numbersOf(us.reply).areaM2).toBeCloseTo(861.6 * 0.3048 ** 2, 6)
  })

  it('names what is wrong with it, and where', async () => {
    const data = folder()
    const bad = await askJson(['--data', data, ...at, '--outline', fileOf(data, '0,0\n24,x\n'), 'sheets'])
    const none = await askJson(['--data', data, ...at, '--outline', join(data, 'none.csv'), 'sheets'])
    const crossing = await askJson(['--data', data, ...at, '--outline', fileOf(data, '0,0\n10,0\n0,10\n10,10\n'), 'sheets'])

    expect(bad).toMatchObject({ code: 2, reply: { error: { code: 'bad-option' } } })
    expect(bad.reply.error?.message).toContain('2: x')
    expect(none).toMatchObject({ code: 2, reply: { error: { code: 'bad-option' } } })
    expect(crossing).toMatchObject({ code: 2, reply: { error: { code: 'inconsistent', word: '4: 10 10' } } })
  })
})
