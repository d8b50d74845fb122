import { toIso } from '../../src/core/instant.js'
import type { Entry, JsonObject } from '../../src/core/log/entry.js'
import { touches } from '../../src/core/log/subjects.js'

export interface RandomEntry extends Pick<Entry, 'seq' | 'at' | 'type' | 'subject' | 'data'> {
  readonly touches: readonly string[]
}

/** A small seeded generator (mulberry32), so that a failing log can be made again. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const start = 1_777_800_000

/** Random entries of every type that moves a state, some late, some undone, some corrected: what a season of phones sends. */
export function randomLog(count: number, seed: number): RandomEntry[] {
  const random = seeded(seed)
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T
  const entries: RandomEntry[] = []
  let voids = 0
  let now = start
  for (let seq = 1; seq <= count; seq += 1) {
    now += Math.floor(random() * 120)
    const late = random() < 0.1 ? Math.floor(random() * 20_000) : 0
    const at = now - late
    const day = toIso(at).slice(0, 10)
    if (entries.length > 10 && random() < 0.06) {
      const target = pick(entries.slice(-40))
      if (target.type !== 'undo' && target.type !== 'correction') {
        const undo = random() < 0.6
        const data: JsonObject = undo
          ? { target: target.seq }
          : { target: target.seq, data: { ...target.data, ...(target.type === 'reading' ? { airC: Math.round(random() * 30) } : {}) } }
        entries.push({ seq, at: toIso(now), type: undo ? 'undo' : 'correction', subject: target.subject, data, touches: target.touches })
        continue
      }
    }
    const made = make(random, pick, day, () => (voids += 1), voids)
    const bare = { seq, at: toIso(at), ...made }
    entries.push({ ...bare, touches: touches(bare, day) })
  }
  return entries
}

/** Some of the coupons are pieces cut out of a seam. */
function cutOrNot(widthMm: number): JsonObject {
  return widthMm === 43 ? { widthMm, cut: true } : { widthMm }
}

type Made = Pick<Entry, 'type' | 'subject' | 'data'>

function make(random: () => number, pick: <T>(list: readonly T[]) => T, day: string, nextVoid: () => number, voids: number): Made {
  const kit = `K${1 + Math.floor(random() * 4)}`
  const welder = pick(['robot', 'hand', 'R2'])
  const kinds: readonly (() => Made)[] = [
    () => ({
      type: 'reading',
      subject: `day:${day}`,
      data: { airC: Math.round(random() * 30), ...(random() < 0.5 ? { substrateC: Math.round(random() * 40) } : {}) }
    }),
    () => ({
      type: 'statement',
      subject: `day:${day}`,
      data: pick<JsonObject>([
        { rainFalling: true },
        { rainFalling: false, rainChancePct: 20 },
        { start: true, tight: true },
        { purged: true },
        { substrateDry: true, fleeceDry: true },
        { compatibility: 'compatible' },
        { thunder: true },
        { sheet: 'unrolled' }
      ])
    }),
    () => ({
      type: 'kit',
      subject: `kit:${kit}`,
      data: pick<JsonObject>([
        { isoC: 24, resinC: 25 },
        { mixed: true },
        { expiresOn: '2099-01-01' },
        { place: 'box', placeC: 30 },
        { usedM2: 12 },
        { empty: true },
        { foam: { signs: ['even'], verdict: 'good', gelS: 45 } }
      ])
    }),
    () => ({
      type: 'coupon',
      subject: `welder:${welder}`,
      data: {
        widthsMm: [41],
        ...cutOrNot(36 + Math.floor(random() * 8)),
        peel: 'film',
        passed: random() < 0.7,
        cause: null,
        minWidthMm: 38,
        conditions: { airC: 15, sheetC: 20, windKmh: 5, cloudPct: null }
      }
    }),
    () => ({
      type: 'welder',
      subject: `welder:${welder}`,
      data: { event: pick(['restart', 'power', 'set', 'off', 'roller', 'probed', 'released']) }
    }),
    () => ({
      type: 'laid',
      subject: `day:${day}`,
      data: { areaM2: Math.round(random() * 60), robotM: Math.round(random() * 30), handM: Math.round(random() * 5), kit, sheets: 2 }
    }),
    () => ({ type: 'void', subject: `void:${nextVoid()}`, data: { course: 3, on: 'lap', distanceM: 2, lengthMm: 40, causes: [] } }),
    () => ({
      type: pick(['repair', 'probe']),
      subject: `void:${Math.max(1, Math.floor(random() * voids))}`,
      data: random() < 0.7 ? { passed: true } : { passed: false }
    }),
    () => ({ type: 'bond', subject: `day:${day}`, data: { substrate: pick(['board', 'foil']), broke: 'foam', passed: random() < 0.8 } }),
    () => ({
      type: 'seal',
      subject: `day:${day}`,
      data: pick<JsonObject>([{ openEdgeM: 12, method: 'tape', files: ['F1'] }, { drainsOpen: true }, { sheetsSafe: false }])
    }),
    () => ({
      type: 'note',
      subject: `day:${day}`,
      data: pick<JsonObject>([{ fire: { heat: true } }, { fire: { done: true } }, { details: { drains: 'good' } }])
    }),
    () => ({
      type: 'note',
      subject: `punch:${1 + Math.floor(random() * 9)}`,
      data: pick<JsonObject>([{ text: 'flange loose' }, { done: true }, { done: false }])
    }),
    () => ({
      type: 'photo',
      subject: pick([`void:${Math.max(1, Math.floor(random() * voids))}`, `day:${day}`]),
      data: { sha256: 'a'.repeat(64), mime: 'image/jpeg', widthPx: 4, heightPx: 3, bytes: 99, file: 'F1' }
    }),
    () => ({ type: 'setting', subject: 'site', data: pick<JsonObject>([{ morning: '06:00' }, { channel: null }, { units: 'us' }]) })
  ]
  return pick(kinds)()
}
