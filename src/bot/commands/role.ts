import { type Beside, type Done, refuse, told } from '../context.js'
import type { Said } from '../words/said.js'

/** Ids as the chat service gives them. */
const chatId = /^[UW][A-Z0-9]{2,20}$/

/** Who may set sites and go ahead against a no: shown, or named by a supervisor. One supervisor always stays. */
export async function role({ person, role: wanted }: Extract<Said, { command: 'role' }>, { ask, ports }: Beside): Promise<Done> {
  const { workspace, via } = ask
  if (wanted !== null && person === null) return refuse('missing', 'person', { label: 'person' })
  if (wanted !== null && ask.role !== 'supervisor') return refuse('not-allowed', 'role', { who: 'supervisor' })
  const supervisorsNow = async () => (await ports.store.supervisors(workspace)).map(({ id }) => id)
  if (person !== null && (via === 'slack' || via === 'room') && !chatId.test(person)) {
    return refuse('not-found', person, { label: 'person', known: [...new Set([...(await supervisorsNow()), ask.user])] })
  }
  if (wanted !== null && person !== null && ask.log && !(await ports.store.nameRole(workspace, person, wanted))) {
    return refuse('wrong-state', person, { label: 'person', state: 'last-supervisor' })
  }
  const about = person ?? ask.user
  const now = wanted ?? (await ports.store.person(workspace, about)).role ?? (person === null ? ask.role : 'crew')
  const kept = await supervisorsNow()
  // Whoever asks at the terminal is one without being kept as one.
  const supervisors = ask.role === 'supervisor' && ask.via === 'ask' && !kept.includes(ask.user) ? [ask.user, ...kept] : kept
  return told({ command: 'role', numbers: { person: about, role: now, named: wanted !== null, supervisors } })
}
