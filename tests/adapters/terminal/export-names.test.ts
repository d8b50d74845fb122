import { readdirSync, readFileSync } from 'node:fs'
import { posix, win32 } from 'node:path'
import { unzipSync } from 'fflate'
import { expect, it } from 'vitest'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { createStore } from '../../../src/adapters/store/store.js'
import type { Paper } from '../../../src/bot/papers/paper.js'
import { defaultSettings } from '../../../src/core/site.js'
import { draw } from '../../../src/wiring/papers.js'
import { askJson, folders, seamhand } from './run.js'

const folder = folders()

/** Names that no person can give a site (outside contract §6), but a store that was brought along may hold. */
const sites = ['/../../etc/cron.d/x', 'C:\\..\\boot\u202e', 'a\u0001b\nc', 'con', '．．／x∕y⁄z', 'x'.repeat(3000), '__proto__']

/** A name that every system takes as one file of the folder it is unpacked in. */
function expectPlain(name: string): void {
  expect(name).toMatch(/^[A-Za-z0-9_][A-Za-z0-9._-]{0,105}$/)
  expect([posix.basename(name), win32.basename(name)]).toEqual([name, name])
  expect(name).not.toMatch(/\.\.|^con\./i)
}

it('a site whose name climbs: names in its packet are no paths, and the file lands where it was asked to', async () => {
  const [data, out, site] = [folder(), folder(), '/../../etc/cron.d/x\\..\\y']
  const store = createStore(await openSqlite(data, { server: false }))
  await store.createSite({ workspace: 'local', site }, { ...defaultSettings, lat: 50, lon: 8, zone: 'Europe/Berlin', posts: [] })
  await store.close()
  const at = ['--at', '2026-05-04T08:00:00Z', '--weather', 'none']
  expect(await askJson(['--data', data, '--site', site, ...at, 'kit K1 25'])).toMatchObject({ code: 0, reply: { ok: true } })
  const ran = await seamhand(['export', '--site', site, '--format', 'zip', '--out', `${out}/it.zip`, '--data', data])
  expect(ran).toMatchObject({ code: 0, err: '' })
  const inside = Object.keys(unzipSync(readFileSync(`${out}/it.zip`)))
  inside.forEach(expectPlain)
  // The document, the table of all days, that of the one and the log.
  expect(inside).toHaveLength(4)
  expect(readdirSync(out)).toEqual(['it.zip'])
})

it.each(sites)('%j as a name in a packet is one file of the folder it is unpacked in', async (site) => {
  const data = { head: ['a'], rows: [['1']] }
  const papers = [`${site}.csv`, `${site}-2026-05-04.csv`].map((name): Paper<'table'> => ({ kind: 'table', name, alt: '', data }))
  const { name, bytes } = await draw({ kind: 'packet', name: `${site}.zip`, alt: '', data: { madeAt: '2026-05-04T16:00:00Z', papers } })
  const inside = Object.keys(unzipSync(bytes))
  expect(inside).toHaveLength(2)
  for (const each of [name, ...inside]) expectPlain(each)
})
