import { blockProblems } from '../blocks.js'
import type { Seamhand } from '../seamhand.js'
import type { Message } from './messages.js'

export interface Handled {
  readonly fault: string | null
  /** What became of it: `ok`, or the code of the refusal. */
  readonly ended: string
}

const failures: readonly string[] = ['internal', 'store', 'config', 'weather-file']

/** Puts a message to the whole bot: what is wrong with the answer, or with what is in the log afterwards. */
export async function handleFaultOf(message: Message, seamhand: Seamhand): Promise<Handled> {
  const { seq } = await seamhand.head()
  const reply = await seamhand.ask(message.text, { units: message.units, role: 'crew', user: 'U1' })
  const after = await seamhand.head()
  const error = reply.error
  const ended = error?.code ?? 'ok'
  const wrong = (what: string): Handled => ({ fault: `${JSON.stringify(message)}: ${what}`, ended })
  const problems = blockProblems(reply)
  if (problems.length > 0) return wrong(problems.join('; '))
  if (error !== null) {
    if (failures.includes(error.code)) return wrong(`${error.code}: ${error.message}`)
    if (reply.logged.length > 0 || after.seq !== seq) return wrong('refused, yet logged')
    return error.message.trim() === '' || error.usage.trim() === '' ? wrong('refused without a next step') : { fault: null, ended }
  }
  if (message.form !== 'any' && Object.keys(message.expected).length > 0) return { fault: await unloggedOf(message, seamhand, seq), ended }
  return { fault: null, ended }
}

/** Readings that were said and are not in the log with their value; null: all are. */
async function unloggedOf(message: Message, seamhand: Seamhand, afterSeq: number): Promise<string | null> {
  const readings = Object.entries(message.expected).filter(([path]) => path.startsWith('reading.'))
  if (readings.length === 0) return null
  const kept = await seamhand.store.entries({ workspace: 'local', site: 'demo' }, afterSeq, 100)
  const data = kept.find(({ entry }) => entry.type === 'reading')?.entry.data ?? {}
  const lost = readings.filter(([path, value]) => !(Math.abs(Number(data[path.slice('reading.'.length)]) - Number(value)) <= 2e-6))
  return lost.length === 0 ? null : `${JSON.stringify(message)}: logged ${JSON.stringify(data)}`
}
