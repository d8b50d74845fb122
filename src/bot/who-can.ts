import type { Refusal } from './answer.js'
import type { Ask } from './ask.js'
import type { Ports } from './context.js'

/** Where a person may not: the same refusal with those who can. */
export async function withWhoCan(refusal: Refusal, { workspace }: Pick<Ask, 'workspace'>, { store }: Pick<Ports, 'store'>): Promise<Refusal> {
  if (refusal.code !== 'not-allowed') return refusal
  const people = (await store.supervisors(workspace)).map(({ id }) => id)
  return { ...refusal, detail: { ...refusal.detail, people } }
}
