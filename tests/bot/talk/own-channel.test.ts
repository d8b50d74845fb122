import { afterEach, beforeEach, expect, it } from 'vitest'
import { seamhands } from '../../support/seamhand.js'
import { startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
})
afterEach(() => talking.close())

const say = (text: string, channel = 'C1') => talking.talk.say(talking.delivery({ user: 'U0BOSS01', channel }), text)

/** The form for a new site, opened in a channel and sent as it came but for its name and place. */
async function begin(name: string, channel: string): Promise<void> {
  const part = { user: 'U0BOSS01', channel }
  const pressed = await talking.talk.press(talking.delivery(part), 'form:start', '+|start')
  if (pressed.kind !== 'form') throw new Error(pressed.message.text)
  const { callback_id = '', private_metadata = '' } = pressed.view
  const values = { name, at: '59.9, 10.7', zone: 'Europe/Oslo', days: ['1'], posts: ['morning'] }
  expect(await talking.talk.submit(talking.delivery(part), callback_id, private_metadata, values)).toMatchObject({ kind: 'message' })
}

it('a site begun by the form in another site’s channel leaves it that channel', async () => {
  await say('site demo channel C0DEMO0001')
  await begin('north', 'C0DEMO0001')
  expect(await talking.store.siteOfChannel('local', 'C0DEMO0001')).toBe('demo')
  const view = await talking.store.view({ workspace: 'local', site: 'north' })
  expect(view?.base.channel).toBeNull()
})

it('and takes a channel that is nobody’s', async () => {
  await say('site demo channel C0DEMO0001')
  await begin('north', 'C0FREE00001')
  expect(await talking.store.siteOfChannel('local', 'C0FREE00001')).toBe('north')
})
