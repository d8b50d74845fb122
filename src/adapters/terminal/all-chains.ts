import { verifySite } from '../../bot/verify.js'
import type { OpenStore } from './tools.js'

/** Every chain of a store walked and every state folded again, as a sentence. */
export async function allChains(store: OpenStore): Promise<{ readonly intact: boolean; readonly sentence: string }> {
  const bad: string[] = []
  const keys = await store.allSites()
  let entries = 0
  for (const key of keys) {
    const verdict = await verifySite(store, key, [])
    entries += verdict?.entries ?? 0
    const first = verdict?.firstBad ?? null
    if (first !== null) bad.push(`${key.workspace}/${key.site} at entry ${first.seq} (${first.why})`)
  }
  if (bad.length === 0) return { intact: true, sentence: `${keys.length} chains verified, ${entries} entries, all intact` }
  return { intact: false, sentence: `NOT intact: ${bad.join(', ')}` }
}
