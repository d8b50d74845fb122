import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { channelIdOf } from '../../../src/adapters/room/index.js'
import { type FakeApp, type Loose, startRoom } from '../../support/room.js'

const demo = channelIdOf('demo')
let folder: string
let app: FakeApp
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'room-'))
  app = await startRoom({ folder })
})
afterEach(async () => {
  await app.close()
  rmSync(folder, { recursive: true })
})

const texts = async () => ((await (await app.page('/room/messages?site=demo')).json()) as Loose[]).map((message) => message.text)
async function again(): Promise<void> {
  await app.close()
  app = await startRoom({ folder })
}

it('shows after a restart what stood there, as it stood last', async () => {
  const { ts } = (await app.api('chat.postMessage', { channel: demo, text: 'first' })).body
  const gone = (await app.api('chat.postMessage', { channel: demo, text: 'gone', metadata: { event_type: 'a', event_payload: {} } })).body.ts
  await app.api('chat.update', { channel: demo, ts, text: 'changed' })
  await app.api('chat.delete', { channel: demo, ts: gone })
  app.onDelivery = () => ({ body: { response_type: 'in_channel', text: 'answer' } })
  await app.page('/room/say', { site: 'demo', user: 'crew', text: '/spray' })
  await app.until(async () => (await texts()).includes('answer'))
  await again()
  expect(await texts()).toEqual(['changed', '/spray', 'answer'])
  const later = (await app.api('chat.postMessage', { channel: demo, text: 'later' })).body.ts
  expect(Number(later)).toBeGreaterThan(Number(ts))
})

it('takes off a last line that was cut short, and goes on after it', async () => {
  await app.api('chat.postMessage', { channel: demo, text: 'whole' })
  await app.close()
  const path = join(folder, 'messages.jsonl')
  appendFileSync(path, '{"op":"message","message":{"chan')
  app = await startRoom({ folder })
  await app.api('chat.postMessage', { channel: demo, text: 'after' })
  await again()
  expect(await texts()).toEqual(['whole', 'after'])
})

it('leaves out a line that nobody can read', async () => {
  await app.api('chat.postMessage', { channel: demo, text: 'whole' })
  await app.close()
  const path = join(folder, 'messages.jsonl')
  writeFileSync(path, `not a line\n${readFileSync(path, 'utf8')}`)
  app = await startRoom({ folder })
  expect(await texts()).toEqual(['whole'])
})

it('keeps files', async () => {
  const bytes = Buffer.from('89504e470d0a1a0a', 'hex')
  const place = (await app.api('files.getUploadURLExternal', { filename: 'sky.png', length: '8' })).body
  await fetch(place.upload_url, { method: 'POST', body: new Uint8Array(bytes) })
  await app.api('files.completeUploadExternal', { files: [{ id: place.file_id }] })
  await again()
  const response = await fetch(`${app.base}/room/files/${place.file_id}`)
  expect(response.headers.get('content-type')).toBe('image/png')
  expect(Buffer.from(await response.arrayBuffer())).toEqual(bytes)
  expect((await fetch(`${app.base}/room/files/..%2fmessages.jsonl`)).status).toBe(404)
})
