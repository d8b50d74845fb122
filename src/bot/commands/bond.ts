import { judgeBond, kiloPascal } from '../../core/closing/bond.js'
import { localDate } from '../../core/instant.js'
import type { BondData } from '../../core/log/closing-data.js'
import { emptyClosing } from '../../core/log/states/closing.js'
import { check } from '../closing/check.js'
import { type Done, type OnSite, told } from '../context.js'
import { photosWanted } from '../photos/wanted.js'
import type { Said } from '../words/said.js'

/** The test square of a substrate and day: cured, peeled, judged by where it broke and by what the designer wants. */
export async function bond({ bond: said }: Extract<Said, { command: 'bond' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  const date = localDate(at, session.settings.zone)
  if (said === null) return shown(on, date)
  const { substrate, cured, broke, ...measured } = said
  const judged = judgeBond({ ...measured, broke, cured })
  const data: BondData = {
    substrate: substrate ?? session.settings.substrate,
    broke,
    ...measured,
    ...(cured ? {} : { uncured: true }),
    passed: judged.passed
  }
  await session.log('bond', `day:${date}`, data, at)
  return shown(on, date, data, at)
}

/** All squares of the day; the outcome is that of the one just told, else of the worst. */
async function shown({ session }: OnSite, date: string, data: BondData | null = null, at: number = session.now): Promise<Done> {
  const { bonds } = (await session.latest(`day:${date}`))?.closing ?? emptyClosing
  const squares = Object.values(bonds).map(({ value }) => value)
  const judged = data === null ? squares : [data]
  const bad = judged.some(({ passed }) => passed === false)
  const unknown = judged.length === 0 || judged.some(({ passed }) => passed === null)
  const outcome = bad ? 'no-go' : unknown ? 'unknown' : 'go'
  const last = judged.at(-1)
  const finding = check('bond-square', outcome, bad ? 'test:bond' : unknown ? (last?.uncured ? 'wait:cured' : 'state:bond') : null, at)
  return told({
    command: 'bond',
    outcome,
    findings: [finding],
    numbers: {
      bonds: squares.map((one) => rowOf(one)),
      ...(data === null ? {} : rowOf(data)),
      ...photosWanted(`day:${date}`, data?.files)
    }
  })
}

function rowOf(data: BondData) {
  const { substrate, broke, passed, forceN = null, wantedN = null, squareMm = null } = data
  return { substrate, broke, passed, forceN, wantedN, squareMm, stressKpa: kiloPascal(forceN, squareMm) }
}
