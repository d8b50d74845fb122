import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { sha256 } from '../../../src/core/log/sha256.js'

// Source: FIPS 180-4 (Secure Hash Standard) with NIST's example values for SHA-256 (one block, two blocks, 896 bits, a million a).
test.each([
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
  [
    'abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu',
    'cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1'
  ],
  ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0']
])('FIPS 180-4 example %#', (text, hash) => {
  expect(sha256(text)).toBe(hash)
})

// Source: Node's own crypto (OpenSSL), a general library.
test('the UTF-8 bytes are hashed, whatever the script and the length', () => {
  for (let length = 0; length < 200; length += 1) {
    const text = 'é€😀a'.repeat(60).slice(0, length)
    const whole = text.replace(/\p{Surrogate}/gu, '')
    expect(sha256(whole)).toBe(createHash('sha256').update(whole, 'utf8').digest('hex'))
  }
})
