import { describe, expect, it } from 'vitest'
import { seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('daylight that is left', () => {
  it('is told by day, and by night left out: fewer than no hours are none', async () => {
    const seamhand = await open({ weather: 'sample' })
    const told = async (at: string) => JSON.stringify((await seamhand.ask('spray', { at })).blocks)
    expect(await told('2026-05-04T08:00:00Z')).toMatch(/daylight after closing up 9/)
    expect(await told('2026-05-04T22:00:00Z')).not.toContain('daylight after closing up')
  })
})
