import { describe, expect, it } from 'vitest'
import { checkMessage, checkView, withIds } from '../../../src/adapters/room/check/index.js'

/*
 * Limits and shapes: documentation of Block Kit as it stands in the comments of @slack/types 3.2 (the same numbers in the validators of the
 * Python SDK); the sum of block text: slackapi/bolt-js issue 2509.
 */

const plain = (text: string) => ({ type: 'plain_text', text })
const mrkdwn = (text: string) => ({ type: 'mrkdwn', text })
const ready = (id: unknown) => id === 'F1'
const button = (part: object = {}) => ({ type: 'button', action_id: 'a', text: plain('x'), ...part })
const actions = (...elements: object[]) => ({ type: 'actions', elements })
const many = <T>(count: number, one: (i: number) => T): T[] => Array.from({ length: count }, (_none, i) => one(i))
const options = (count: number, text = 'x', value = 'v') => many(count, () => ({ text: plain(text), value }))

/** What may just pass, and what may just not: at which pointer. */
const rows: readonly [string, object, object, string][] = [
  ['section text', { type: 'section', text: mrkdwn('x'.repeat(3000)) }, { type: 'section', text: mrkdwn('x'.repeat(3001)) }, '/blocks/0/text/text'],
  ['section text, empty', { type: 'section', text: mrkdwn('x') }, { type: 'section', text: mrkdwn('') }, '/blocks/0/text/text'],
  ['section without anything', { type: 'section', fields: [plain('x')] }, { type: 'section' }, '/blocks/0'],
  ['fields', { type: 'section', fields: many(10, () => plain('x')) }, { type: 'section', fields: many(11, () => plain('x')) }, '/blocks/0/fields'],
  [
    'field text',
    { type: 'section', fields: [plain('x'.repeat(2000))] },
    { type: 'section', fields: [plain('x'.repeat(2001))] },
    '/blocks/0/fields/0/text'
  ],
  ['header', { type: 'header', text: plain('😀'.repeat(150)) }, { type: 'header', text: plain('x'.repeat(151)) }, '/blocks/0/text/text'],
  ['header markup', { type: 'header', text: plain('x') }, { type: 'header', text: mrkdwn('x') }, '/blocks/0/text/type'],
  [
    'context',
    { type: 'context', elements: many(10, () => mrkdwn('x')) },
    { type: 'context', elements: many(11, () => mrkdwn('x')) },
    '/blocks/0/elements'
  ],
  [
    'actions',
    actions(...many(25, (i) => button({ action_id: `${i}` }))),
    actions(...many(26, (i) => button({ action_id: `${i}` }))),
    '/blocks/0/elements'
  ],
  ['action_id twice', actions(button(), button({ action_id: 'b' })), actions(button(), button()), '/blocks/0/elements/1/action_id'],
  ['action_id', actions(button({ action_id: 'x'.repeat(255) })), actions(button({ action_id: 'x'.repeat(256) })), '/blocks/0/elements/0/action_id'],
  ['block_id', { type: 'divider', block_id: 'x'.repeat(255) }, { type: 'divider', block_id: 'x'.repeat(256) }, '/blocks/0/block_id'],
  [
    'button text',
    actions(button({ text: plain('x'.repeat(75)) })),
    actions(button({ text: plain('x'.repeat(76)) })),
    '/blocks/0/elements/0/text/text'
  ],
  ['button value', actions(button({ value: 'x'.repeat(2000) })), actions(button({ value: 'x'.repeat(2001) })), '/blocks/0/elements/0/value'],
  ['button style', actions(button({ style: 'danger' })), actions(button({ style: 'loud' })), '/blocks/0/elements/0/style'],
  ['button colour', actions(button()), actions(button({ colour: 'red' })), '/blocks/0/elements/0'],
  [
    'select',
    actions({ type: 'static_select', action_id: 's', options: options(100) }),
    actions({ type: 'static_select', action_id: 's', options: options(101) }),
    '/blocks/0/elements/0/options'
  ],
  [
    'radio buttons',
    actions({ type: 'radio_buttons', action_id: 'r', options: options(10) }),
    actions({ type: 'radio_buttons', action_id: 'r', options: options(11) }),
    '/blocks/0/elements/0/options'
  ],
  [
    'option value',
    actions({ type: 'static_select', action_id: 's', options: options(1, 'x', 'v'.repeat(75)) }),
    actions({ type: 'static_select', action_id: 's', options: options(1, 'x', 'v'.repeat(76)) }),
    '/blocks/0/elements/0/options/0/value'
  ],
  [
    'alt text',
    { type: 'image', slack_file: { id: 'F1' }, alt_text: 'x'.repeat(2000) },
    { type: 'image', slack_file: { id: 'F1' } },
    '/blocks/0/alt_text'
  ],
  [
    'file not processed',
    { type: 'image', slack_file: { id: 'F1' }, alt_text: 'x' },
    { type: 'image', slack_file: { id: 'F2' }, alt_text: 'x' },
    '/blocks/0/slack_file'
  ],
  [
    'picture twice',
    { type: 'image', image_url: 'https://example.org/a.png', alt_text: 'x' },
    { type: 'image', image_url: 'https://example.org/a.png', slack_file: { id: 'F1' }, alt_text: 'x' },
    '/blocks/0'
  ],
  ['block type', { type: 'divider' }, { type: 'marquee' }, '/blocks/0/type'],
  [
    'number in a message',
    { type: 'divider' },
    { type: 'input', label: plain('x'), element: { type: 'number_input', is_decimal_allowed: true } },
    '/blocks/0/element'
  ]
]

describe('messages', () => {
  for (const [name, good, bad, pointer] of rows) {
    it(`${name}: passes at the limit, refused past it`, () => {
      expect(checkMessage([good], ready)).toBeNull()
      expect(checkMessage([bad], ready)).toMatchObject({ error: 'invalid_blocks', messages: [expect.stringContaining(`[json-pointer:${pointer}]`)] })
    })
  }

  it('hold 50 blocks', () => {
    expect(
      checkMessage(
        many(50, () => ({ type: 'divider' })),
        ready
      )
    ).toBeNull()
    expect(
      checkMessage(
        many(51, () => ({ type: 'divider' })),
        ready
      )?.messages
    ).toEqual(['[ERROR] no more than 50 items allowed [json-pointer:/blocks]'])
  })

  it('hold 13,000 characters together', () => {
    const full = many(13, () => ({ type: 'section', text: mrkdwn('x'.repeat(1000)) }))
    expect(checkMessage(full, ready)).toBeNull()
    expect(checkMessage([...full, { type: 'header', text: plain('x') }], ready)).toEqual({ error: 'msg_blocks_too_long', messages: [] })
  })

  it('are refused when they are no blocks at all', () => {
    for (const value of [null, 'blocks', {}, [null], [[]], [1]]) expect(checkMessage(value, ready)?.error).toBe('invalid_blocks')
  })

  it('have no block_id twice', () => {
    expect(
      checkMessage(
        [
          { type: 'divider', block_id: 'a' },
          { type: 'divider', block_id: 'a' }
        ],
        ready
      )?.messages
    ).toEqual(['[ERROR] block_id a already exists [json-pointer:/blocks/1/block_id]'])
  })

  it('get ids where they have none', () => {
    expect(withIds([{ type: 'divider' }, actions({ type: 'button', text: plain('x') }, button())])).toEqual([
      { type: 'divider', block_id: 'block1' },
      { type: 'actions', block_id: 'block2', elements: [{ type: 'button', text: plain('x'), action_id: 'action1' }, button()] }
    ])
  })
})

describe('views', () => {
  const modal = (part: object) => ({ type: 'modal', title: plain('x'), blocks: [{ type: 'divider' }], ...part })
  const input = { type: 'input', label: plain('x'), element: { type: 'number_input', is_decimal_allowed: true } }
  const bad: readonly [string, object, string][] = [
    ['title', { title: plain('x'.repeat(25)) }, '/view/title/text'],
    ['submit', { submit: plain('x'.repeat(25)) }, '/view/submit/text'],
    ['close', { close: plain('x'.repeat(25)) }, '/view/close/text'],
    ['private_metadata', { private_metadata: 'x'.repeat(3001) }, '/view/private_metadata'],
    ['callback_id', { callback_id: 'x'.repeat(256) }, '/view/callback_id'],
    ['blocks', { blocks: many(101, () => ({ type: 'divider' })) }, '/view/blocks'],
    ['inputs without a way to send', { blocks: [input] }, '/view'],
    ['type', { type: 'home' }, '/view/type']
  ]
  for (const [name, part, pointer] of bad) {
    it(`${name}: refused`, () => {
      expect(checkView(modal(part), 'modal', ready)).toMatchObject({
        error: 'invalid_arguments',
        messages: expect.arrayContaining([expect.stringContaining(`[json-pointer:${pointer}]`)])
      })
    })
  }

  it('pass at their limits', () => {
    const full = {
      title: plain('x'.repeat(24)),
      submit: plain('x'.repeat(24)),
      private_metadata: 'x'.repeat(3000),
      blocks: [input, ...many(99, () => ({ type: 'divider' }))]
    }
    expect(checkView(modal(full), 'modal', ready)).toBeNull()
    expect(checkView({ type: 'home', blocks: [{ type: 'divider' }] }, 'home', ready)).toBeNull()
  })
})
