import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openTimeS } from '../../../src/core/kits/open-time.js'
import { runsFor } from '../../../src/core/kits/runs.js'
import { sheet } from '../../support/facts.js'
import { freshFolder, numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const plain = (c: number) => openTimeS(c, sheet().foam.openTime) as number

describe('how far foam may be sprayed', () => {
  it('is answered for all three ways of working', async () => {
    const { ask } = await open()
    const reply = await ask('spray deck 20')
    const runs = runsFor(plain(20), sheet())
    const shown = (value: number | undefined) => Math.round((value ?? Number.NaN) * 1e6) / 1e6
    expect(numbersOf(reply)).toMatchObject({ reachM: shown(runs?.stopM), stopEveryM: shown(runs?.stopEveryM), nozzlesShort: false })
    expect(numbersOf(reply).ways).toEqual([
      { how: 'stop', reachM: shown(runs?.stopM), noLimit: false },
      { how: 'follow', reachM: null, noLimit: true },
      { how: 'flop', reachM: shown(runs?.flopM), noLimit: false }
    ])
  })

  it('is not known without the substrate', async () => {
    const { ask } = await open()
    expect(numbersOf(await ask('spray air 20'))).toMatchObject({ reachM: null, stopEveryM: null, ways: [], nozzlesShort: null })
  })

  it('foam that stays open too short for any run is said to', async () => {
    const { ask } = await open()
    const hot = await ask('spray deck 60')
    expect(numbersOf(hot)).toMatchObject({ stopEveryM: 0, nozzlesNeeded: null })
    expect(hot.text).toContain('does not stay open long enough')
  })

  it('nozzles that run out before the foam are said to, in the answer and in the plan of the day', async () => {
    const limits = join(freshFolder(), 'short.yaml')
    writeFileSync(limits, 'id: short\nversion: 1\ntitle: Short\nunits: metric\nfoam: { nozzlesPerKit: 2, basis: invented }\n')
    const { ask } = await open({ limits, weather: 'sample' })
    const reply = await ask('spray deck 20')
    expect(numbersOf(reply)).toMatchObject({ nozzlesNeeded: 3, nozzlesPerKit: 2, nozzlesShort: true })
    expect(reply.text).toContain('Nozzles run out before foam: about 3 nozzles needed for a kit, 2 come with it.')
    const day = await ask('day', { at: '05:30' })
    expect(numbersOf(day).nozzlesShort).toBe(true)
    expect(day.text).toContain('Nozzles run out before foam')
  })

  it('follows a test spray, until the kit changes or the deck is 5 K off', async () => {
    const { ask } = await open()
    await ask('spray deck 20 kit K1 25')
    await ask('foam 40 s even')
    expect(numbersOf(await ask('spray deck 20')).openTimeS).toBeCloseTo(40, 6)
    expect(numbersOf(await ask('spray deck 26')).openTimeS).toBeCloseTo(plain(26), 6)
    expect(numbersOf(await ask('spray deck 20 kit K2 25')).openTimeS).toBeCloseTo(plain(20), 6)
  })
})
