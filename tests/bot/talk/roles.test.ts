import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { seamhands } from '../../support/seamhand.js'
import { startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
  await talking.talk.say(talking.delivery({ user: 'U0BOSS01' }), 'can we spray now?')
})
afterEach(() => talking.close())

const say = (user: string, text: string, channel = 'C1') => talking.talk.say(talking.delivery({ user, channel }), text)
const roleOf = async (user: string) => (await talking.store.person('local', user)).role

describe('roles', () => {
  it('names who can where a person may not', async () => {
    const refused = await say('U0CREW01', 'site morning 07:00')
    expect(refused.text).toContain('only for supervisors')
    expect(refused.text).toContain('Ask a supervisor: <@U0BOSS01>')
    expect((await talking.talk.say(talking.delivery({ user: 'U0CREW01', lang: 'fr' }), 'site matin 07:00')).text).toContain('<@U0BOSS01>')
  })

  it.each([
    ['role <@U0CREW01> supervisor', 'supervisor'],
    ['role <@U0CREW01|ana> inspector', 'inspector'],
    ['rol cuadrilla @U0CREW01', 'crew'],
    ['rôle U0CREW01 chef', 'supervisor']
  ])('are named by a supervisor: %s', async (words, role) => {
    const named = await say('U0BOSS01', words)
    expect(named).toMatchObject({ to: 'asker' })
    expect(named.text).toContain('<@U0CREW01>')
    expect(await roleOf('U0CREW01')).toBe(role)
  })

  it('are named by nobody else, and by no name that the chat service did not give', async () => {
    expect((await say('U0CREW01', 'role <@U0CREW01> supervisor')).text).toContain('Ask a supervisor: <@U0BOSS01>')
    const stranger = (await say('U0BOSS01', 'role @ana supervisor')).text
    expect(stranger).toContain('Not found')
    expect(stranger).toContain('Type @ and choose the person, or write the id. Known here: <@U0BOSS01>')
    expect((await say('U0BOSS01', 'role supervisor')).text).toContain('Missing: person')
    expect(await roleOf('U0CREW01')).toBeNull()
  })

  it('know their own words only: what is none is named, and two people are two', async () => {
    expect((await say('U0BOSS01', 'role <@U0CREW01> boss')).text).toContain('Not understood: “boss”')
    expect((await talking.talk.say(talking.delivery({ user: 'U0BOSS01', lang: 'fr' }), 'role <@U0CREW01> boss')).text).toContain(
      '[chef | équipe | inspecteur]'
    )
    expect((await say('U0BOSS01', 'role <@U0CREW01> <@U0CREW02> crew')).text).toContain('twice')
    expect(await roleOf('U0CREW01')).toBeNull()
  })

  it('never leave a workspace without a supervisor', async () => {
    expect((await say('U0BOSS01', 'role <@U0BOSS01> crew')).text).toContain('name another one first')
    expect(await roleOf('U0BOSS01')).toBe('supervisor')
    await say('U0BOSS01', 'role <@U0CREW01> supervisor')
    await say('U0BOSS01', 'role <@U0BOSS01> crew')
    expect([await roleOf('U0BOSS01'), await roleOf('U0CREW01')]).toEqual(['crew', 'supervisor'])
  })

  it('are shown to whoever asks', async () => {
    const shown = await say('U0CREW01', 'role')
    expect(shown.text).toContain('<@U0CREW01>: crew')
    expect(shown.text).toContain('Supervisors: <@U0BOSS01>')
  })
})

describe('setting up', () => {
  const line = 'start harbour at 50.1,8.2 zone Europe/Berlin units us lang es hours 06:00-16:00 evening 16:30'

  it('makes a site of one line, with all that was said, and says what comes next', async () => {
    const made = await say('U0BOSS01', line, 'C0HARBOUR')
    const view = await talking.store.view({ workspace: 'local', site: 'harbour' })
    expect(made.text).toContain('Site harbour is set up')
    // 10:00 in Berlin: the evening post, not the wrap-up at 16:00, which comes before it.
    expect(made.text).toContain('First post: wrap-up, 16:00')
    expect(made.text).toMatch(/invite @Seamhand/)
    expect(view?.base).toMatchObject({ units: 'us', lang: 'es', hours: '06:00-16:00', evening: '16:30', channel: 'C0HARBOUR' })
    expect(view?.head.seq).toBe(1)
    expect((await say('U0BOSS01', line, 'C0HARBOUR')).text).toContain('ya hay una')
  })

  it('is for supervisors, and refuses what a site cannot have, with nothing made', async () => {
    expect((await say('U0CREW01', line)).text).toContain('Ask a supervisor: <@U0BOSS01>')
    expect((await say('U0BOSS01', `${line} limits nowhere`)).text).toContain('nowhere')
    expect((await say('U0BOSS01', 'start harbour zone Europe/Berlin')).text).toContain('Missing: place')
    expect((await say('U0BOSS01', 'start harbour at 50.1,8.2')).text).toContain('Missing: zone')
    expect(await talking.store.sites('local')).toEqual(['demo'])
  })

  it('alone says how, and stays a word of spraying and of the day', async () => {
    expect((await say('U0BOSS01', 'start')).text).toContain('start north at 50.1,8.2')
    expect((await say('U0BOSS01', 'spray start tight purged')).to).toBe('channel')
    expect((await say('U0BOSS01', 'day start')).to).toBe('channel')
  })
})
