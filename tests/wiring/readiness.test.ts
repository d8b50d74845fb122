import { describe, expect, it } from 'vitest'
import { createReadiness } from '../../src/wiring/readiness.js'

function made(look: () => Promise<unknown> = async () => []) {
  const clock = { now: 1000 }
  return { clock, readiness: createReadiness({ now: () => clock.now, chat: () => true, look }) }
}

describe('readiness', () => {
  it('of the weather is whether a live source answered within the hour, where one was asked', () => {
    const { clock, readiness } = made()
    const { weather } = readiness.health
    expect(weather()).toBe(true)
    readiness.asked('down')
    expect(weather()).toBe(false)
    readiness.asked('unchanged')
    expect(weather()).toBe(true)
    clock.now += 3600
    readiness.asked('down')
    expect(weather()).toBe(true)
    clock.now += 1
    expect(weather()).toBe(false)
    readiness.asked('fresh')
    expect(weather()).toBe(true)
    // Another server asks now: this one hears of nothing.
    clock.now += 7200
    expect(weather()).toBe(true)
  })

  it('of store and outbox is whether the store answers in time, and whether the last tick did', async () => {
    const { readiness } = made()
    expect([await readiness.health.store(), await readiness.health.outbox()]).toEqual([true, true])
    readiness.ticked(false)
    expect([await readiness.health.store(), await readiness.health.outbox()]).toEqual([true, false])
    readiness.ticked(true)
    expect(await readiness.health.outbox()).toBe(true)
    const away = made(() => Promise.reject(new Error('away'))).readiness
    expect([await away.health.store(), await away.health.outbox()]).toEqual([false, false])
  })

  it('asks the store once for those who ask at once, and anew afterwards', async () => {
    let looks = 0
    const { health } = made(async () => {
      looks += 1
    }).readiness
    expect(await Promise.all([health.store(), health.outbox(), health.store()])).toEqual([true, true, true])
    expect(looks).toBe(1)
    await health.outbox()
    expect(looks).toBe(2)
  })

  it('does not wait for a store that hangs', async () => {
    const { readiness } = made(() => new Promise(() => {}))
    expect(await readiness.health.store()).toBe(false)
  })
})
