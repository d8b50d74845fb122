import { describe, expect, it } from 'vitest'
import { ConfigError, readConfig } from '../src/config.js'

const problemsOf = (env: Record<string, string>): string => {
  try {
    readConfig(env)
    return ''
  } catch (error) {
    expect(error).toBeInstanceOf(ConfigError)
    return (error as Error).message
  }
}

describe('settings', () => {
  it('need nothing: the local room, SQLite in .seamhand, English and metric', () => {
    expect(readConfig({})).toMatchObject({
      PORT: 3000,
      SEAMHAND_DATA: '.seamhand',
      SEAMHAND_LANG: 'en',
      SEAMHAND_UNITS: 'metric',
      slack: null,
      SEAMHAND_WEATHER: { kind: 'live', order: ['met', 'nws', 'open-meteo'] }
    })
  })

  it('count an empty value as not set', () => {
    expect(readConfig({ PORT: '', DATABASE_URL: '' }).PORT).toBe(3000)
  })

  it('name every problem at once', () => {
    const problems = problemsOf({
      PORT: '70000',
      SEAMHAND_LANG: 'de',
      SEAMHAND_UNITS: 'imperial',
      DATABASE_URL: 'mysql://x',
      LOG_LEVEL: 'loud',
      SEAMHAND_WEATHER: 'met,moon'
    })
    for (const name of ['PORT', 'SEAMHAND_LANG', 'SEAMHAND_UNITS', 'DATABASE_URL', 'LOG_LEVEL', 'SEAMHAND_WEATHER'])
      expect(problems).toContain(`${name}: `)
    expect(problems).toContain('moon')
  })

  it.each([
    [{ SLACK_BOT_TOKEN: 'xoxb-1' }, 'SLACK_SIGNING_SECRET'],
    [{ SLACK_APP_TOKEN: 'xapp-1' }, 'SLACK_BOT_TOKEN'],
    [{ SLACK_SIGNING_SECRET: 's' }, 'SLACK_BOT_TOKEN'],
    [{ SLACK_BOT_TOKEN: 'xapp-1', SLACK_APP_TOKEN: 'xoxb-1' }, 'xoxb-'],
    [{ SLACK_API_URL: 'http://example.org/api/' }, 'SLACK_API_URL']
  ])('refuse half a set or the wrong one, and never fall back to the local room: %o', (env, named) => {
    expect(problemsOf(env as Record<string, string>)).toContain(named)
  })

  const key = Buffer.alloc(32, 7)
  const many = {
    SLACK_CLIENT_ID: '1.2',
    SLACK_CLIENT_SECRET: 'c',
    SLACK_STATE_SECRET: 'sixteen letters!',
    SLACK_SIGNING_SECRET: 's',
    SEAMHAND_TOKEN_KEY: key.toString('base64')
  }

  it('take many workspaces with all five, and with several keys', () => {
    expect(readConfig(many).slack).toEqual({
      kind: 'many',
      clientId: '1.2',
      clientSecret: 'c',
      stateSecret: 'sixteen letters!',
      signingSecret: 's',
      tokenKeys: [key]
    })
    const two = `${Buffer.alloc(32, 9).toString('base64')}, ${key.toString('base64').replace('=', '')}`
    expect(readConfig({ ...many, SEAMHAND_TOKEN_KEY: two }).slack).toMatchObject({ tokenKeys: [Buffer.alloc(32, 9), key] })
  })

  it.each(Object.keys(many))('refuse many workspaces without %s, which is named', (name) => {
    const { [name as keyof typeof many]: _, ...rest } = many
    expect(problemsOf(rest)).toMatch(new RegExp(`^${name}: missing`))
  })

  it.each(['SLACK_BOT_TOKEN', 'SLACK_APP_TOKEN'])('refuse one workspace and many at once: %s', (name) => {
    expect(problemsOf({ ...many, [name]: name.includes('BOT') ? 'xoxb-1' : 'xapp-1' })).toContain(`${name}: one workspace or many`)
  })

  it.each(['short', Buffer.alloc(16).toString('base64'), Buffer.alloc(33).toString('base64'), `${key.toString('base64')},`, 'ä'.repeat(44)])(
    'refuse the token key %j, and do not repeat it',
    (text) => {
      const problems = problemsOf({ ...many, SEAMHAND_TOKEN_KEY: text })
      expect(problems).toContain('SEAMHAND_TOKEN_KEY: must be 32 bytes as base64')
      expect(problems).not.toContain(text)
    }
  )

  it('never let invented weather answer in Slack', () => {
    expect(problemsOf({ SLACK_BOT_TOKEN: 'xoxb-1', SLACK_SIGNING_SECRET: 's', SEAMHAND_WEATHER: 'sample' })).toContain('SEAMHAND_WEATHER: sample')
    expect(readConfig({ SEAMHAND_WEATHER: 'sample' }).slack).toBeNull()
  })

  it('take Slack over HTTP or Socket Mode', () => {
    expect(readConfig({ SLACK_BOT_TOKEN: 'xoxb-1', SLACK_SIGNING_SECRET: 's' }).slack).toEqual({
      kind: 'http',
      botToken: 'xoxb-1',
      signingSecret: 's'
    })
    expect(readConfig({ SLACK_BOT_TOKEN: 'xoxb-1', SLACK_APP_TOKEN: 'xapp-1' }).slack).toEqual({
      kind: 'socket',
      botToken: 'xoxb-1',
      appToken: 'xapp-1'
    })
    expect(readConfig({ SLACK_API_URL: 'http://127.0.0.1:3999/api/' }).SLACK_API_URL).toContain('3999')
  })

  it.each([
    ['sample', { kind: 'sample' }],
    ['none', { kind: 'none' }],
    ['file:x.json', { kind: 'file', path: 'x.json' }],
    ['nws,met', { kind: 'live', order: ['nws', 'met'] }]
  ])('take the weather from %s', (text, choice) => {
    expect(readConfig({ SEAMHAND_WEATHER: text }).SEAMHAND_WEATHER).toEqual(choice)
  })

  it('take other addresses of the weather services, and only web addresses', () => {
    const none = readConfig({})
    expect([none.MET_URL, none.NWS_URL, none.OPEN_METEO_URL, none.OPEN_METEO_KEY, none.OPEN_METEO_NON_COMMERCIAL]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      false
    ])
    const urls = { MET_URL: 'http://127.0.0.1:1/met', NWS_URL: 'https://nws.example', OPEN_METEO_URL: 'http://weather.lan/v1' }
    expect(readConfig(urls)).toMatchObject(urls)
    for (const name of Object.keys(urls))
      for (const url of ['weather.example', 'ftp://weather.example', 'file:///etc/passwd'])
        expect(problemsOf({ [name]: url })).toContain(`${name}: must be an http or https address`)
  })

  it.each([
    ['true', true],
    ['1', true],
    ['yes', true],
    ['false', false],
    ['0', false],
    ['', false]
  ])('read %j of OPEN_METEO_NON_COMMERCIAL as %s', (text, on) => {
    expect(readConfig({ OPEN_METEO_NON_COMMERCIAL: text }).OPEN_METEO_NON_COMMERCIAL).toBe(on)
  })

  it('refuse a word that is neither yes nor no, and a key that is none, without repeating it', () => {
    const problems = problemsOf({ OPEN_METEO_NON_COMMERCIAL: 'perhaps', OPEN_METEO_KEY: 'se cret' })
    expect(problems).toContain('OPEN_METEO_NON_COMMERCIAL: must be true or false')
    expect(problems).toContain('OPEN_METEO_KEY: ')
    expect(problems).not.toContain('cret')
  })

  it.each([
    ['http://weather.lan/v1', true],
    ['https://weather.example/v1', false],
    ['http://127.0.0.1:8080/v1', false]
  ])('send the key to %s in the clear: refused %s', (url, refused) => {
    const problems = problemsOf({ OPEN_METEO_URL: url, OPEN_METEO_KEY: 'secret' })
    expect(problems.includes('OPEN_METEO_URL: must be https where OPEN_METEO_KEY is set')).toBe(refused)
    expect(problems).not.toContain('secret')
  })
})
