import { describe, expect, it } from 'vitest'
import { resolveKept } from '../../src/adapters/limits/files.js'
import { replay } from '../../src/bot/replay.js'
import { engineVersion } from '../../src/core/engine.js'
import { fullSpray, type Seamhand, seamhands } from '../support/seamhand.js'

const open = seamhands()

describe('replay', () => {
  it.each([
    ['spray', fullSpray],
    ['spray with nothing known', 'spray'],
    ['spray in doubt', 'spray air 6 deck 6.5 rh 88 kit 21.5 mixed rain'],
    ['lay', 'air 12 wind 30 gust 44 thunder'],
    ['weld', 'weld air 4 sheet 3 rh 90 lap clean dry lead 60 m 2.5 mm2']
  ])('%s comes out the same from its own inputs, with and without a forecast', async (_name, text) => {
    for (const weather of ['none', 'sample'] as const) {
      const seamhand = await open({ weather })
      await seamhand.ask('weld robot 41 film')
      const { decision, outcome, activities } = await seamhand.ask(text)

      const replayed = await seamhand.replay(decision ?? '')
      expect(replayed).toEqual({
        id: decision,
        same: true,
        outcome: activities.lay ?? outcome,
        engine: engineVersion,
        recordedEngine: engineVersion,
        differs: []
      })
    }
  })

  it('does not look at what was said since, nor at the sheet now in use', async () => {
    const seamhand = await open()
    const { decision } = await seamhand.ask(fullSpray)
    await seamhand.askAll(['air thunder', 'undo demo-1', 'spray rain'])

    expect(await seamhand.replay(decision ?? '')).toMatchObject({ same: true, outcome: 'go' })
  })

  it.each(['demo-1', 'demo-99', 'north-4', 'demo', '', 'demo-0', 'demo-04'])('%j is no decision', async (id) => {
    const seamhand = await open()
    await seamhand.ask(fullSpray)

    expect(await seamhand.replay(id)).toBeNull()
  })

  const tampered = (seamhand: Seamhand, keepsake: Seamhand['store']['keepsake'], id: string) =>
    replay({ ...seamhand.store, keepsake }, 'local', id, resolveKept)

  it('says that the kept sheet is another one than was used', async () => {
    const seamhand = await open()
    const id = (await seamhand.ask(fullSpray)).decision ?? ''
    const changed = await tampered(
      seamhand,
      async (workspace, sha256) => {
        const kept = await seamhand.store.keepsake(workspace, sha256)
        return kept && { ...kept, body: kept.body.replace('"min":21', '"min":26').replace('"cautionBelow":22', '"cautionBelow":27') }
      },
      id
    )

    expect(changed).toMatchObject({ same: false, outcome: 'no-go', differs: expect.arrayContaining(['limits', 'kit-temperature/spray']) })
  })

  it('says so too when the other sheet comes to the same answer', async () => {
    const seamhand = await open()
    const id = (await seamhand.ask(fullSpray)).decision ?? ''
    const changed = await tampered(
      seamhand,
      async (workspace, sha256) => {
        const kept = await seamhand.store.keepsake(workspace, sha256)
        return kept && { ...kept, body: kept.body.replace('"title":"Common practice"', '"title":"Another"') }
      },
      id
    )

    expect(changed).toMatchObject({ same: false, outcome: 'go', differs: ['limits'] })
  })

  it.each([
    ['gone', null],
    ['damaged', '{"id":'],
    ['no sheet', '{"id":"x"}']
  ])('says that the sheet is %s', async (_what, body) => {
    const seamhand = await open()
    const id = (await seamhand.ask(fullSpray)).decision ?? ''

    expect(await tampered(seamhand, async (_workspace, sha256) => (body === null ? null : { sha256, kind: 'sheet', body }), id)).toMatchObject({
      same: false,
      outcome: null,
      differs: ['limits']
    })
  })

  it('tells the engine that recorded it from the one at work', async () => {
    const seamhand = await open()
    const id = (await seamhand.ask(fullSpray)).decision ?? ''
    const view: Seamhand['store']['view'] = async (key) => {
      const real = await seamhand.store.view(key)
      return (
        real && {
          ...real,
          entry: async (seq) => {
            const kept = await real.entry(seq)
            return kept && { ...kept, entry: { ...kept.entry, data: { ...kept.entry.data, engine: '0.0.9', outcome: 'caution' } } }
          }
        }
      )
    }

    expect(await replay({ ...seamhand.store, view }, 'local', id, resolveKept)).toMatchObject({
      same: false,
      outcome: 'go',
      engine: engineVersion,
      recordedEngine: '0.0.9',
      differs: []
    })
  })
})
