import { posix, win32 } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fileName } from '../../src/core/file-name.js'

describe('fileName', () => {
  it.each(['demo-2026-05-04.pdf', 'demo.zip', 'strip.png', 'north-k7-widths.png', 'x.tar.gz'])('leaves %s as it is', (name) => {
    expect(fileName(name)).toBe(name)
  })

  it.each([
    ['../../etc/passwd', 'etc-passwd'],
    ['..\\..\\boot.ini', 'boot.ini'],
    ['/etc/cron.d/x.csv', 'etc-cron.d-x.csv'],
    ['C:\\x.csv', 'C--x.csv'],
    ['a\u0000b.pdf', 'a-b.pdf'],
    ['．．／x.pdf', 'x.pdf'],
    ['…∕⁄x.pdf', 'x.pdf'],
    ['con.zip', '_con.zip'],
    ['NUL', '_NUL'],
    ['lpt1.csv', '_lpt1.csv'],
    ['\u202egpj.exe', 'gpj.exe'],
    ['.pdf', 'pdf'],
    ['', 'file'],
    ['..', 'file'],
    [`${'x'.repeat(3000)}-2026-05-04.csv`, `${'x'.repeat(96)}.csv`]
  ])('%j becomes %s', (name, made) => {
    expect(fileName(name)).toBe(made)
  })

  it('is never a path, whatever it is given', () => {
    const tricky = fc.constantFrom('..', '/', '\\', '.', ':', '\u0000', 'con', 'aux.', ' ', '~', '%2e', '．', '／', '\ud800', '.pdf', 'a')
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.array(tricky, { maxLength: 8 }).map((parts) => parts.join(''))
        ),
        (name) => {
          const made = fileName(name)
          expect(made).toMatch(/^[A-Za-z0-9_][A-Za-z0-9._-]{0,100}$/)
          expect([posix.basename(made), win32.basename(made), posix.normalize(made)]).toEqual([made, made, made])
          expect(made).not.toMatch(/\.\.|^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i)
          expect(fileName(made)).toBe(made)
        }
      ),
      { numRuns: 200 }
    )
  })
})
