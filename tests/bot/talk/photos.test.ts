import { createHash } from 'node:crypto'
import { createCanvas } from '@napi-rs/canvas'
import type { ActionsBlock, Button, ModalView } from '@slack/types'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { checkView } from '../../../src/adapters/room/check/index.js'
import { forms } from '../../../src/bot/forms/index.js'
import type { FetchedPhoto } from '../../../src/bot/photos/fetched.js'
import type { Message, Pressed } from '../../../src/bot/talk/talk.js'
import { seamhands } from '../../support/seamhand.js'
import { startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
})
afterEach(() => talking.close())

const bytes = createCanvas(8, 6).toBuffer('image/png')
const png: FetchedPhoto = { kind: 'bytes', bytes, base64: bytes.toString('base64'), sha256: createHash('sha256').update(bytes).digest('hex') }
const buttonsOf = ({ blocks }: Message): Button[] =>
  blocks.filter((block): block is ActionsBlock => block.type === 'actions').flatMap(({ elements }) => elements as Button[])
const viewOf = (pressed: Pressed): ModalView => {
  if (pressed.kind !== 'form') throw new Error('no form')
  return pressed.view
}
const say = (text: string, files?: readonly string[]) => talking.talk.say(talking.delivery(files === undefined ? {} : { files }), text)
const wanted = (file = 'F1', subject = 'void:1') => ({ site: 'demo', subject, file })

describe('photos in talk', () => {
  it('go with the words of a message that can have them, and stay out of others', async () => {
    expect((await say('probe course 4 lap 3 m 40 mm', ['F1', 'F2'])).photos).toEqual([wanted(), wanted('F2')])
    expect((await say('probe 1', ['F3'])).photos).toEqual([wanted('F3')])
    expect((await say('punch flange loose', ['F4'])).photos).toEqual([wanted('F4', 'punch:1')])
    expect((await say('seal 4 m tape', ['F5'])).photos).toEqual([wanted('F5', 'day:2026-05-04')])
    const spray = await say('spray air 20', ['F6'])
    expect(spray.photos).toEqual([])
    expect(spray.text).toContain('demo-')
  })

  it('alone are asked what they show, and the form takes them along', async () => {
    const asked = await say('', ['F1', 'F2'])
    expect(asked.to).toBe('asker')
    const button = buttonsOf(asked)[0]
    const view = viewOf(await talking.talk.press(talking.delivery(), button?.action_id ?? '', button?.value ?? ''))
    expect(checkView(view, 'modal', () => false)).toBeNull()
    expect(view.blocks[0]).toMatchObject({ text: { text: '2 photos come along' } })
    const sent = await talking.talk.submit(talking.delivery(), 'void', view.private_metadata ?? '', {
      course: '4',
      on: 'lap',
      length: '40',
      photos: ['F9']
    })
    expect(sent).toMatchObject({ kind: 'message', message: { photos: [wanted('F9'), wanted('F1'), wanted('F2')] } })
  })

  it('come from a shortcut on a message, where there is a site', async () => {
    const { talk, delivery } = talking
    const view = viewOf(await talk.shortcut(delivery({ files: ['F1'] }), 'form:void'))
    expect(JSON.parse(view.private_metadata ?? '')).toMatchObject({ site: 'demo', channel: 'C1', files: ['F1'] })
    expect(viewOf(await talk.shortcut(delivery(), 'form:punch')).callback_id).toBe('punch')
    expect(await talk.shortcut(delivery({ channel: 'C9' }), 'form:void')).toMatchObject({ kind: 'message', message: { to: 'asker' } })
    expect(await talk.shortcut(delivery(), 'form:else')).toMatchObject({ kind: 'message' })
  })

  it('are kept and said so to the channel; why not, to the one who sent it', async () => {
    await say('probe course 4 lap 3 m 40 mm', ['F1'])
    expect(await talking.talk.photo(talking.delivery(), wanted(), png)).toMatchObject({ to: 'channel', text: 'Photo kept: void 1 (demo-2)' })
    expect((await say('probe list')).text).toContain('1 photo')

    const away = await talking.talk.photo(talking.delivery(), wanted('F2'), { kind: 'failed', why: 'away' })
    expect(away).toMatchObject({ to: 'asker', text: expect.stringContaining('not kept') })
    expect(buttonsOf(away)[0]).toMatchObject({ value: 'demo|probe 1 photo F2' })
    const again = await talking.talk.press(talking.delivery(), 'say:photo', buttonsOf(away)[0]?.value ?? '')
    expect(again).toMatchObject({ kind: 'message', message: { photos: [wanted('F2')] } })
  })

  it('of one who only reads are not asked for', async () => {
    await talking.store.savePerson('local', 'U9', { role: 'inspector' })
    expect((await talking.talk.say(talking.delivery({ user: 'U9', files: ['F1'] }), 'probe course 4 lap 3 m 40 mm')).photos).toEqual([])
  })

  it.each(['seal', 'detail', 'punch', 'void'] as const)('the form %s says only what the words can say', async (id) => {
    const values = {
      edge: '12',
      method: 'tape',
      checks: ['drains open', 'rolled'],
      by: 'Ana',
      details: ['cut edges', 't-steps'],
      text: 'flange loose'
    }
    const place = { course: '4', on: 'lap', distance: '3', length: '40', cause: ['foam'], photos: ['F1'] }
    const view = viewOf(await talking.talk.press(talking.delivery(), `form:${id}`, `demo|${id}`))
    const sent = await talking.talk.submit(talking.delivery(), id, view.private_metadata ?? '', { ...values, ...place })
    expect(sent).toMatchObject({ kind: 'message', message: { photos: [{ file: 'F1' }] } })
    expect(forms[id].command).toBe(id === 'void' ? 'probe' : id)
  })
})
