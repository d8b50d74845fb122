import { randomBytes } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { createSealer, decrypt, encrypt } from '../../../src/adapters/store/sealing.js'
import vectors from '../../truth/aes-gcm.json' with { type: 'json' }

const hex = (text: string) => Buffer.from(text, 'hex')
const [old, newer] = [randomBytes(32), randomBytes(32)]

/** The source of the cases stands in the file. */
describe.each(vectors.cases)('published case $id of AES-256-GCM', ({ key, iv, about, text, sealed, tag }) => {
  test('is sealed and opened as published', () => {
    expect(encrypt(hex(key), hex(iv), hex(about), hex(text))).toEqual({ text: hex(sealed), tag: hex(tag) })
    expect(decrypt(hex(key), hex(iv), hex(about), { text: hex(sealed), tag: hex(tag) })).toEqual(hex(text))
  })

  test('is not opened with a bit of tag, text, key or what it is about turned', () => {
    const turned = (bytes: Buffer) => Buffer.from(bytes.map((byte, index) => (index === 0 ? byte ^ 1 : byte)))
    const good = { text: hex(sealed), tag: hex(tag) }
    expect(decrypt(hex(key), hex(iv), hex(about), { ...good, tag: turned(good.tag) })).toBeNull()
    expect(decrypt(turned(hex(key)), hex(iv), hex(about), good)).toBeNull()
    expect(decrypt(hex(key), hex(iv), Buffer.from('other'), good)).toBeNull()
    if (good.text.length > 0) expect(decrypt(hex(key), hex(iv), hex(about), { ...good, text: turned(good.text) })).toBeNull()
    // A short tag is easier to guess: NIST SP 800-38D, appendix C.
    expect(decrypt(hex(key), hex(iv), hex(about), { ...good, tag: good.tag.subarray(0, 4) })).toBeNull()
  })
})

describe('a sealer', () => {
  test('opens what it sealed, about the same thing only, and never seals twice alike', () => {
    const sealer = createSealer([old])
    const [one, two] = [sealer.seal('T1', 'xoxb-secret'), sealer.seal('T1', 'xoxb-secret')]
    expect(one).not.toBe(two)
    expect(one).not.toMatch(/xoxb|secret/)
    expect([sealer.open('T1', one), sealer.open('T2', one)]).toEqual(['xoxb-secret', null])
  })

  test('seals with the first key and opens with all of them', () => {
    const [before, between, after] = [createSealer([old]), createSealer([newer, old]), createSealer([newer])]
    const sealed = before.seal('T1', 'a')
    expect([between.open('T1', sealed), after.open('T1', sealed)]).toEqual(['a', null])
    expect([before.isNewest(sealed), between.isNewest(sealed), between.isNewest(between.seal('T1', 'b'))]).toEqual([true, false, true])
    expect(after.open('T1', between.seal('T1', 'b'))).toBe('b')
  })

  test.each(['', 'v1', 'v1.a.b.c.d', 'v2.x', 'v1.....', 'x'.repeat(1000)])('opens nothing else: %j', (text) => {
    expect(createSealer([old]).open('T1', text)).toBeNull()
  })

  test('takes no short key and no empty list', () => {
    expect(() => createSealer([])).toThrow(TypeError)
    expect(() => createSealer([randomBytes(16)])).toThrow(TypeError)
  })
})
