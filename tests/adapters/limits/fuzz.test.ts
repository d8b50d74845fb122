import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { heads, sheetFault, sheetFiles, textFault } from '../../support/fuzz/limits.js'

describe('limits sheets, whatever stands in them', () => {
  it('are refused with their file, or hold numbers', () => {
    fc.assert(
      fc.property(sheetFiles, (file) => {
        expect(sheetFault(file)).toBeNull()
      }),
      { numRuns: 40 }
    )
  })

  // Shrunk: a key within a key within a key … kept the reader of YAML busy for a minute at 800 bytes, and ended the process at 64 KB.
  it.each([
    ['on one line', '? '.repeat(400)],
    ['on a long line', '? '.repeat(32_000)],
    ['on lines of their own', Array.from({ length: 200 }, (_, i) => `${' '.repeat(i)}?`).join('\n')]
  ])('keys within keys %s are refused at once', (_, text) => {
    expect(textFault(text)).toBeNull()
  })

  it.each([
    ['a list of 3,000 lists', `${'['.repeat(3000)}\n`],
    ['maps across lines', '{a:\n'.repeat(2000)],
    ['a file that is too large', '# nothing\n'.repeat(7000)]
  ])('%s is refused', (_, text) => {
    expect(textFault(text)).toBeNull()
  })

  it.each(heads.filter((head) => head !== ''))('%j is refused', (head) => {
    expect(textFault(head)).toBeNull()
  })
})
