import { describe, expect, it } from 'vitest'
import { createLog, reportBug } from '../../src/adapters/log.js'

function logging() {
  const lines: string[] = []
  return { log: createLog('info', { write: (line) => void lines.push(line) }), lines }
}

const secrets = [
  'xoxb-123-abc',
  'xoxe.xoxp-1-abc',
  'xapp-1-A0-9',
  'Bearer abc.def',
  'postgres://seam:hunter2@db/x',
  'https://hooks.slack.com/commands/T1/2/3',
  'https://w.example/v1?lat=1&apikey=k123&x=1',
  'anna.roof@example.org',
  'U0123ABCD'
]
const shown = /xoxb-|xoxp-|xapp-1|abc\.def|hunter2|hooks\.slack|k123|anna|example\.org|U0123/

describe('log lines', () => {
  it.each(secrets)('hold no secret and no person: %s', (secret) => {
    const { log, lines } = logging()
    log.warn({ detail: `failed with ${secret} there`, deep: { list: [secret] } }, `said ${secret}`)
    log.error({ err: new Error(`no ${secret}`, { cause: new Error(`for ${secret}`) }) }, 'bug')
    expect(lines).toHaveLength(2)
    for (const line of lines) expect(line).not.toMatch(shown)
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ level: 40, time: expect.stringMatching(/Z$/) })
  })

  it('hold nothing of the members that drivers and clients put on errors', () => {
    const { log, lines } = logging()
    const error = Object.assign(new Error('duplicate key'), {
      code: '23505',
      detail: 'Key (workspace, person)=(T1, Anna) already exists.',
      parameters: ['Anna'],
      data: { token: 'xoxb-1' },
      headers: { authorization: 'Bearer 1' }
    })
    log.error({ err: error, user: 'Anna', text: 'air 20 Anna', author: 'Anna', deep: { name: 'Anna' } }, 'bug')
    const line = JSON.parse(lines[0] ?? '') as { err: object }
    expect(lines[0]).not.toMatch(/Anna|xoxb|Bearer/)
    expect(line.err).toMatchObject({ type: 'Error', code: '23505', message: 'duplicate key', stack: expect.stringContaining('log.test') })
  })

  it('of a bug give the reference that the person was told, and not who', () => {
    const { log, lines } = logging()
    const error = new TypeError('cannot read')
    const ref = reportBug(log, error, { user: 'U0123ABCD', via: 'slack' })
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ ref, via: 'slack', msg: 'bug' })
    expect(lines[0]).not.toContain('U0123ABCD')
    expect(reportBug(log, error, {})).toBe(ref)
  })

  it('stay what they were where nothing is to be hidden', () => {
    const { log, lines } = logging()
    log.info({ site: 'north', key: 'T1/north/morning/2026-05-04', why: 'stale', left: 2, none: null }, 'post not sent')
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({
      site: 'north',
      key: 'T1/north/morning/2026-05-04',
      why: 'stale',
      left: 2,
      none: null,
      msg: 'post not sent'
    })
  })
})
