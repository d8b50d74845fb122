import { describe, expect, it } from 'vitest'
import { seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('what takes people off the roof', () => {
  it('stands first, whatever else is missing', async () => {
    const { text } = await (await open()).ask('spray air 20 wind 60 gust 80 thunder deck 2 wet')
    const reasons = text.split('\n').filter((line) => line.startsWith('✕'))
    expect(reasons.slice(1, 3).join(' ')).toMatch(/thunder/)
  })
})
