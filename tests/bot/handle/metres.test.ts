import { describe, expect, it } from 'vitest'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

/** Outside contract §6 (onHoldM) and common practice, no source: probe all, cut back until two are good, patch the cuts, release. */
describe('metres', () => {
  it('welded while a clearance was lapsed are on hold, said without being asked', async () => {
    const seamhand = await open()
    await seamhand.askAll(['weld robot 41 film', 'laid 40 m2 robot 20 m', 'weld robot restart'])
    const laid = await seamhand.ask('laid 20 m2 robot 10 m')

    expect(numbersOf(laid)).toMatchObject({ onHoldM: 10, newOnHoldM: 10, held: [{ name: 'robot', onHoldM: 10, lapsedBy: 'restart' }] })
    expect(laid.text).toMatch(/10 m on hold \(robot 10 m\)/)
    const weld = await seamhand.ask('weld')
    expect(numbersOf(weld)).toMatchObject({ onHoldM: 10, welders: [{ name: 'robot', onHoldM: 10, clearedM: 20 }] })
    expect(weld.text).toMatch(/on hold/)
    // A new pass clears the welder, not what it welded before.
    expect(numbersOf(await seamhand.ask('weld robot 41 film'))).toMatchObject({ cleared: true, onHoldM: 10, clearedM: 20, releasedM: 0 })
  })

  it('welded after the weather changed are on hold, though nobody said that the clearance lapsed', async () => {
    const seamhand = await open()
    await seamhand.askAll(['air 15', 'weld robot 41 film'], { at: '09:00' })
    await seamhand.ask('air 22', { at: '09:30' })
    const laid = await seamhand.ask('laid 20 m2 robot 10 m hand 2 m', { at: '09:40' })

    expect(numbersOf(laid)).toMatchObject({
      onHoldM: 12,
      held: [
        { name: 'hand', onHoldM: 2, lapsedBy: null },
        { name: 'robot', onHoldM: 10, lapsedBy: 'air' }
      ]
    })
    expect((await seamhand.entries()).at(-1)?.data).toMatchObject({ lapsed: { robot: { by: 'air', couponAt: '2026-05-04T07:00:00Z' } } })
  })

  it('welded the next day without a coupon, and past noon on a coupon of the morning, are on hold', async () => {
    const seamhand = await open()
    await seamhand.ask('weld robot 41 film', { at: '09:00' })
    expect(numbersOf(await seamhand.ask('laid 20 m2 robot 10 m', { at: '11:59' })).onHoldM).toBe(0)
    expect(numbersOf(await seamhand.ask('laid 20 m2 robot 10 m', { at: '12:00' })).onHoldM).toBe(10)
    await seamhand.ask('weld robot 41 film', { at: '13:00' })
    expect(numbersOf(await seamhand.ask('laid 20 m2 robot 5 m', { at: '2026-05-05T08:00:00+02:00' })).onHoldM).toBe(15)
  })

  it('of any welder are counted under its name, and take it into use', async () => {
    const seamhand = await open()
    await seamhand.ask('weld R2 41 film')
    const laid = await seamhand.ask('laid 20 m2 robot 4 m R2 10 m')

    expect(numbersOf(laid)).toMatchObject({ onHoldM: 4, held: [{ name: 'robot', onHoldM: 4 }] })
    expect(numbersOf(await seamhand.ask('weld')).welders).toMatchObject([
      { name: 'R2', cleared: true, clearedM: 10 },
      { name: 'robot', cleared: false, clearedM: 0 }
    ])
    // The rate of voids is over all metres welded.
    expect(numbersOf(await seamhand.ask('probe course 1 3 m 40 mm'))).toMatchObject({ per100m: expect.closeTo(100 / 14, 6) })
  })

  it('come off hold by two good cuts in a row and probing, in parts or whole', async () => {
    const seamhand = await open()
    await seamhand.askAll(['weld robot 41 film', 'laid 40 m2 robot 30 m', 'weld robot 30 film'])
    const no = await seamhand.ask('weld robot released')
    expect(no).toMatchObject({ ok: false, error: { code: 'wrong-state' } })
    expect(no.text).toMatch(/two pieces are good/)

    await seamhand.ask('weld robot cut 41 film')
    const bad = await seamhand.ask('weld robot cut 34 film')
    expect(numbersOf(bad)).toMatchObject({ passed: false, onHoldM: 30, goodCuts: 0 })
    expect(bad.text).toMatch(/cut back farther/)
    expect(numbersOf(await seamhand.askAll(['weld robot cut 41 film', 'weld robot cut 42 film']))).toMatchObject({ goodCuts: 2, cleared: false })
    expect((await seamhand.ask('weld robot released')).text).toMatch(/probe/)

    expect((await seamhand.ask('weld robot probed')).text).toMatch(/2 of 2 · all probed → patch the cuts, then: weld NAME released/)
    expect(await seamhand.ask('weld robot released 31 m')).toMatchObject({ ok: false, error: { code: 'out-of-range' } })
    const part = await seamhand.ask('weld robot released 22 m')
    expect(numbersOf(part)).toMatchObject({ onHoldM: 8, releasedM: 22 })
    expect(part.text).toContain('welded: 0 m cleared, 8 m on hold, 22 m released')
    expect(numbersOf(await seamhand.ask('weld robot released'))).toMatchObject({ onHoldM: 0, releasedM: 30, clearedM: 0 })
    expect(await seamhand.ask('weld robot released')).toMatchObject({ ok: false, error: { code: 'wrong-state' } })
  })

  it('go back on hold when a cut that freed them is undone', async () => {
    const seamhand = await open()
    await seamhand.askAll(['laid 40 m2 robot 30 m', 'weld robot cut 41 film', 'weld robot cut 41 film', 'weld robot probed', 'weld robot released'])
    expect(numbersOf(await seamhand.ask('weld robot'))).toMatchObject({ onHoldM: 0, releasedM: 30 })
    await seamhand.ask('undo demo-3')

    expect(numbersOf(await seamhand.ask('weld robot'))).toMatchObject({ onHoldM: 30, releasedM: 0 })
  })

  it('are put on hold by a restart told late, and freed by a coupon told late', async () => {
    const seamhand = await open()
    await seamhand.ask('weld robot 41 film', { at: '09:00' })
    await seamhand.ask('laid 40 m2 robot 30 m', { at: '09:30' })
    expect(numbersOf(await seamhand.ask('weld robot restart @09:15', { at: '09:40' }))).toMatchObject({ onHoldM: 30, lapsedBy: 'restart' })
    expect(numbersOf(await seamhand.ask('weld robot 41 film @09:20', { at: '09:45' }))).toMatchObject({ onHoldM: 0, cleared: true, clearedM: 30 })
  })
})
