import { expect, it } from 'vitest'
import { temporaryPostgres } from '../support/databases.js'
import { runMany } from './many/run.js'

const count = Number(process.env.COUNT ?? 10_000)
const seed = Number(process.env.SEED ?? 1)
const urlOf = temporaryPostgres()

it(`${count} commands and ${count} posts on four instances, two killed at random (SEED=${seed} COUNT=${count})`, async () => {
  const { faults, ...outcome } = await runMany({
    url: await urlOf('campaign'),
    seed,
    instances: 4,
    commands: count,
    sites: count,
    speed: 4,
    // A minute of the shared clock.
    beatMs: 15_000,
    killEveryMs: Number(process.env.KILL_MS ?? 20_000),
    downMs: 500,
    spreadMin: Math.max(1, Math.min(20, Math.round(count / 500))),
    atOnce: 16,
    note: (line) => void process.stdout.write(`${line}\n`)
  })
  process.stdout.write(`${JSON.stringify({ ...outcome, faults })}\n`)
  expect(outcome).toMatchObject({
    acknowledged: count,
    lost: [],
    unaccounted: 0,
    brokenChains: [],
    postsShown: count,
    postsLost: [],
    postsDoubled: [],
    exits: [0, 0, 0, 0]
  })
  expect(outcome.kills).toBeGreaterThan(1)
})
