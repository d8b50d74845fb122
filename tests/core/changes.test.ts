import { describe, expect, it } from 'vitest'
import { instantOf, seamhands } from '../support/seamhand.js'

const open = seamhands()
const full =
  'spray air 20 deck 20 rh 50 wind 10 gust 15 rain 10 % no thunder mixed kit 25 dry clean compatible intakes none relaxed tight purged nozzle tested exp 2099-01-01'

/** What is said in order, and when the outcome of the last question changes next: site time, to the second. */
const changes: readonly (readonly [why: string, said: readonly (readonly [text: string, at: string])[], changesAt: string | null])[] = [
  ['the deck reading passes 30 min', [[full, '10:00']], '10:30:01'],
  [
    'the kit was mixed 30 min before',
    [
      [full, '10:00'],
      ['spray deck 20', '10:10']
    ],
    '10:30:01'
  ],
  [
    'a reading passes 60 min',
    [
      [full, '10:00'],
      ['spray deck 20 mixed kit 25', '10:40']
    ],
    '11:00:01'
  ],
  [
    'unrolled sheets have relaxed for 30 min',
    [
      [full.replace('relaxed', 'unrolled'), '10:00'],
      ['spray deck 20', '10:01']
    ],
    '10:30'
  ],
  ['the sun rises', [[full, '05:40']], '05:59:22'],
  ['air that is too cold was read 60 min ago', [['spray air 2', '10:00']], '11:00:01'],
  ['thunder was heard 30 min ago', [['air thunder air 20 rh 50 wind 10 gust 15', '10:00']], '10:30:01'],
  [
    'thunder was heard, though "no thunder" was said since',
    [
      ['air thunder air 20 rh 50 wind 10 gust 15', '10:00'],
      ['air no thunder', '10:20']
    ],
    '10:30:01'
  ],
  [
    'the half-day ends',
    [
      ['weld robot 41 film', '11:50'],
      ['weld air 20 rh 50 sheet 25 wind 10 rain 5 % lap clean dry lead 10 m 2.5 mm2', '11:50']
    ],
    '12:00'
  ],
  [
    'a fresh sheet takes a foot after 10 min',
    [
      ['weld robot 41 film', '10:00'],
      ['laid 40 m2', '10:00'],
      ['weld air 20 rh 50 sheet 25 wind 10 no rain lap clean dry lead 10 m 2.5 mm2', '10:00']
    ],
    '10:10'
  ],
  [
    'the resin was read apart from iso',
    [
      [full, '10:00'],
      ['spray iso 25 mixed deck 20 air 20 rh 50 wind 10 gust 15 rain 10 % dry', '10:45']
    ],
    '11:00:01'
  ]
]

describe('changesAt', () => {
  it.each(changes)('%s', async (_why, said, expected) => {
    const seamhand = await open()
    let reply = null
    for (const [text, at] of said) {
      reply = await seamhand.ask(text, { at })
      expect(reply.ok, text).toBe(true)
    }
    if (expected !== null) expect(reply?.changesAt).toBe(new Date(instantOf(expected) * 1000).toISOString().replace('.000', ''))
  })

  it.each(changes)('%s: a second before the outcome is the same, then it is another', async (_why, said) => {
    const seamhand = await open()
    let reply = null
    for (const [text, at] of said) reply = await seamhand.ask(text, { at })
    const { changesAt, command, outcome } = reply as { changesAt: string | null; command: string; outcome: string }
    if (changesAt === null) return
    const at = new Date(Date.parse(changesAt) - 1000).toISOString()
    const own = command === 'air' ? 'lay' : (command as 'spray' | 'weld')

    expect((await seamhand.ask(command, { at, log: false })).outcome).toBe(outcome)
    const then = await seamhand.ask(command, { at: changesAt, log: false })
    expect(`${then.activities[own]} ${then.outcome}`).not.toBe(`${outcome} ${outcome}`)
  })

  it('is not looked for past local midnight, nor more than 12 h ahead', async () => {
    const seamhand = await open()
    const late = await seamhand.ask('air air 20 rh 50 wind 10 gust 15 no thunder', { at: '23:30' })
    expect(late.changesAt).toBeNull()
    // The sun sets at 20:51: 12 h and a little ahead of the early question it is not seen.
    expect((await seamhand.ask('weld', { at: '06:30' })).changesAt).toBeNull()
  })
})
