// A process of its own on a store: `append` writes until it is done or killed and prints each acknowledged seq, `serve` holds
// the server's lock until it is killed, `open` only opens.
import { writeSync } from 'node:fs'

const [compiled, mode, folder, name, count] = process.argv.slice(2)
const { openSqlite } = await import(`${compiled}/adapters/store/open-sqlite.js`)
const { createStore } = await import(`${compiled}/adapters/store/store.js`)

const store = createStore(await openSqlite(folder, { server: mode === 'serve' }))
const demo = { workspace: 'local', site: 'demo' }
const draft = {
  at: '2026-05-04T06:10:00Z',
  author: name,
  via: 'ask',
  type: 'reading',
  subject: 'site',
  day: '2026-05-04',
  touches: ['site']
}

async function appendOne(n) {
  const done = await store.append(demo, 1_777_875_000, { key: `${name}-${n}` }, async (view) => {
    const state = ((await view.state('site'))?.state ?? 0) + 1
    return { drafts: [{ ...draft, data: { n } }], moved: [{ subject: 'site', state }], keepsakes: [], posts: [], reply: n }
  })
  writeSync(1, `${done.kept[0].entry.seq} ${done.kept[0].hash}\n`)
}

if (mode === 'append') for (let n = 0; n < Number(count); n += 1) await appendOne(n)
if (mode === 'serve') {
  writeSync(1, 'serving\n')
  setInterval(() => undefined, 1000)
} else await store.close()
