import { learnMixing, type ReadingPair } from '../../core/kits/learn.js'
import { pairsOf } from '../../core/kits/pairs.js'
import type { KitData, LearnedMixing } from '../../core/log/data.js'
import type { Step } from '../../core/log/states/noted.js'
import type { OnSite } from '../context.js'
import { stateIn } from '../session/states.js'

/** The kits read last, and the newest pairs, tell enough and bound the work. */
const mostKits = 12
const mostPairs = 12
/** Fewer say less than the sheet does. */
const fewestPairs = 3

/**
 * How kits of the site warm, as a reading that is about to be logged and the pairs before it say; null where it ends no pair or there are
 * too few. By the log alone: the same log says the same.
 */
export async function learnedBy(on: OnSite, subject: string, data: KitData, at: number): Promise<LearnedMixing | null> {
  const { session, sheet } = on
  if (data.isoC === undefined && data.resinC === undefined) return null
  const past = (await session.asOf(at).steps(subject)) as readonly Step[]
  const own = pairsOf(past, sheet.kit)
  const ended = pairsOf([...past, { seq: Number.MAX_SAFE_INTEGER, at, type: 'kit', subject, data: { ...data } as Step['data'] }], sheet.kit)
  if (ended.length === own.length) return null
  const pairs = [...ended, ...(await pairsOfOthers(on, subject, at))].sort((a, b) => a.mixed.at - b.mixed.at).slice(-mostPairs)
  const learned = learnMixing(sheet.kit, sheet.kit.mixing, pairs)
  return learned.pairs < fewestPairs ? null : { mixing: Number(learned.mixing.toFixed(3)), pairs: learned.pairs }
}

async function pairsOfOthers({ session, sheet }: OnSite, subject: string, at: number): Promise<readonly ReadingPair[]> {
  const rows = (await session.view.states('kit:')).filter((row) => row.subject !== subject)
  const readAt = (row: (typeof rows)[number]) => {
    const kit = stateIn<'kit'>(row)
    return Math.max(kit?.isoC?.at ?? 0, kit?.resinC?.at ?? 0)
  }
  const newest = rows.sort((a, b) => readAt(b) - readAt(a)).slice(0, mostKits)
  const all = await Promise.all(newest.map((row) => session.asOf(at).steps(row.subject)))
  return all.flatMap((steps) => pairsOf(steps, sheet.kit))
}
