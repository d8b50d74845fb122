import { expect, test } from 'vitest'
import { createMemo } from '../../src/core/memo.js'

test('a memo asks once for each key, gives the same value again, and lets the one not asked for longest go', () => {
  const asked: string[] = []
  const memo = createMemo<{ readonly of: string }>(2)
  const get = (key: string) =>
    memo(key, () => {
      asked.push(key)
      return { of: key }
    })
  const a = get('a')
  expect(get('b')).toEqual({ of: 'b' })
  expect(get('a')).toBe(a)
  get('c')
  expect(asked).toEqual(['a', 'b', 'c'])
  expect(get('a')).toBe(a)
  get('b')
  expect(asked).toEqual(['a', 'b', 'c', 'b'])
})

test('an undefined value is kept too, and one that could not be made is asked for again', () => {
  let count = 0
  const memo = createMemo<undefined>(1)
  const get = (fails: boolean) =>
    memo('k', () => {
      count += 1
      if (fails) throw new Error('no')
      return undefined
    })
  expect(() => get(true)).toThrow('no')
  get(false)
  get(false)
  expect(count).toBe(2)
})
