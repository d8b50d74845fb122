import serialize from 'canonicalize'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { canonical } from '../../../src/core/log/canonical.js'

// Source: RFC 8785, JSON Canonicalization Scheme (June 2020), section 3.2.2.
test('the example of RFC 8785 section 3.2.2', () => {
  const value = JSON.parse(String.raw`{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
    "literals": [null, true, false]
  }`)
  expect(canonical(value)).toBe(
    String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`
  )
})

// Source: RFC 8785, section 3.2.3: keys in order of UTF-16 code units.
test('the order of keys of RFC 8785 section 3.2.3', () => {
  const value = JSON.parse(String.raw`{
    "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
    "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
  }`)
  const order = [...canonical(value).matchAll(/:"([^"]+)"/g)].map((match) => match[1])
  expect(order).toEqual([
    'Carriage Return',
    'One',
    'Control',
    'Latin Small Letter O With Diaeresis',
    'Euro Sign',
    'Emoji: Grinning Face',
    'Hebrew Letter Dalet With Dagesh'
  ])
})

// Source: RFC 8785, appendix B: IEEE 754 bit patterns and their text.
test.each([
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2']
])('the number %s of RFC 8785 appendix B', (bits, text) => {
  expect(canonical(Buffer.from(bits, 'hex').readDoubleBE())).toBe(text)
})

// Source: RFC 8785, appendix B: NaN and infinity are errors.
test.each([
  ['undefined', undefined],
  ['a function', () => 1],
  ['NaN', Number.NaN],
  ['infinity', Number.POSITIVE_INFINITY],
  ['NaN inside', { a: [{ b: Number.NaN }] }]
])('%s is refused as a mistake', (_, value) => {
  expect(() => canonical(value)).toThrow(TypeError)
})

test('the order in which members were written does not matter', () => {
  expect(canonical({ b: 1, a: { d: [2, 1], c: null } })).toBe('{"a":{"c":null,"d":[2,1]},"b":1}')
  expect(canonical({ a: { c: null, d: [2, 1] }, b: 1 })).toBe('{"a":{"c":null,"d":[2,1]},"b":1}')
})

// Source: the canonicalize package, the reference implementation of RFC 8785.
test('anything that is JSON comes out as the reference implementation writes it', () => {
  const reference = serialize as unknown as (value: unknown) => string
  fc.assert(
    fc.property(fc.jsonValue({ stringUnit: 'binary' }), (value) => {
      expect(canonical(value)).toBe(reference(value))
    }),
    { numRuns: 150, seed: 8785 }
  )
  fc.assert(
    fc.property(fc.dictionary(fc.string({ unit: 'binary', maxLength: 3 }), fc.double({ noNaN: true, noDefaultInfinity: true })), (value) => {
      expect(canonical(value)).toBe(reference(value))
    }),
    { numRuns: 150, seed: 8785 }
  )
  expect(canonical({ b: undefined, a: [undefined, -0] })).toBe(reference({ b: undefined, a: [undefined, -0] }))
})
