import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest'
import { channelIdOf } from '../../../src/adapters/room/index.js'
import type { WhatIf, WhatIfAsked } from '../../../src/bot/talk/what-if.js'
import { launchBrowser } from '../../support/browser.js'
import { type FakeApp, startRoom } from '../../support/room.js'

const demo = channelIdOf('demo')
const png = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64')

let browser: Browser
let app: FakeApp
let page: Page
let supposed: Omit<WhatIfAsked, 'workspace'>[]
let complaints: string[]

beforeAll(async () => {
  browser = await launchBrowser()
})
afterAll(() => browser.close())
beforeEach(async () => {
  supposed = []
  app = await startRoom({ whatIf: suppose })
})
afterEach(async () => {
  await page.context().close()
  await app.close()
  expect(complaints, 'what the browser complained of').toEqual([])
})

/** Berlin's week of 4 May 2026; the text says the instant, so that a test sees which one was asked for. */
async function suppose(asked: Omit<WhatIfAsked, 'workspace'>): Promise<WhatIf> {
  supposed.push(asked)
  const iso = new Date(asked.at * 1000).toISOString()
  const from = Date.parse('2026-05-03T22:00:00Z') / 1000
  const nextMorning = asked.at < Date.parse('2026-05-05T03:30:00Z') / 1000 ? Date.parse('2026-05-05T03:30:00Z') / 1000 : null
  const told = (['spray', 'day', 'morning'] as const).map((kind) => ({
    kind,
    text: `${kind} at ${iso}`,
    blocks: [{ type: 'section' as const, text: { type: 'mrkdwn' as const, text: `${kind} at ${iso} &lt;b&gt;` } }]
  }))
  return { at: asked.at, from, to: from + 7 * 86_400, zone: 'Europe/Berlin', nextMorning, told }
}

async function open(query: string, width = 1280): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height: 800 }, timezoneId: 'Europe/Berlin' })
  const made = await context.newPage()
  complaints = []
  made.on('pageerror', (error) => complaints.push(error.message))
  made.on('console', (message) => message.type() === 'error' && complaints.push(message.text()))
  await made.goto(`${app.base}/${query}`)
  await made.locator('#sites a').first().waitFor()
  return made
}

async function shared(name: string, bytes: Buffer, alt: string): Promise<void> {
  const place = (await app.api('files.getUploadURLExternal', { filename: name, length: String(bytes.length), alt_txt: alt })).body
  await fetch(place.upload_url, { method: 'POST', body: new Uint8Array(bytes) })
  await app.api('files.completeUploadExternal', { files: [{ id: place.file_id, title: name }], channel_id: demo })
}

const focused = () => page.evaluate(() => document.activeElement?.textContent)

it('speaks the language of its address, and of its settings at once', async () => {
  page = await open('?lang=es')
  expect(await page.evaluate(() => [document.documentElement.lang, document.title])).toEqual(['es', 'Seamhand, sala local'])
  for (const [role, name] of [
    // The English names of outside contract §12 stand in them, so that the page is found by them whatever its language.
    ['navigation', 'Obras (Sites)'],
    ['log', 'Mensajes (Messages)'],
    ['textbox', 'Mensaje (Message)'],
    ['button', 'Enviar (Send)'],
    ['region', 'Inicio (Home)']
  ] as const)
    expect(await page.getByRole(role, { name, exact: true }).count(), name).toBe(1)
  await page.getByText('Todavía no hay mensajes').waitFor()
  await app.api('chat.postMessage', { channel: demo, text: 'hola' })
  const today = new Intl.DateTimeFormat('es', { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'Europe/Berlin' }).format()
  await page.getByText(today).waitFor()
  await page.getByRole('textbox').fill('/nada')
  await page.getByRole('button', { name: 'Enviar' }).click()
  await page.getByRole('log').getByText('/nada no es un comando. Pruebe /seamhand nada o /seamhand ayuda.').waitFor()

  await page.getByRole('radio', { name: 'Français' }).check()
  await page.getByRole('button', { name: 'Répondre' }).waitFor()
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('fr')
  expect(await page.getByText(/Obras|Enviar|Inicio|Responder/).count()).toBe(0)
  await page.reload()
  await page.getByRole('navigation', { name: 'Chantiers' }).waitFor()
  // Nothing of the server's frame was left in another language than its own.
  expect(await (await fetch(`${app.base}/?lang=fr`)).text()).toMatch(/<html lang="fr">.*Réglages.*Envoyer/s)
  expect(await (await fetch(`${app.base}/?lang=xx"><b>`)).text()).toMatch(/<html lang="en">/)
})

it('shows a picture large: the words for it stay, keys and buttons change its size, Escape leads back', async () => {
  page = await open('')
  await shared('day.png', png, 'Spray can go from 10:00 to 11:15')
  const button = page.getByRole('button', { name: 'Enlarge: day.png' })
  await button.press('Enter')
  const dialog = page.getByRole('dialog', { name: 'day.png' })
  const large = dialog.getByRole('img', { name: 'Spray can go from 10:00 to 11:15' })
  const width = async () => (await large.boundingBox())?.width ?? 0
  const first = await width()
  await page.keyboard.press('+')
  expect(await width()).toBeCloseTo(first * 1.5, 0)
  await dialog.getByRole('button', { name: 'Larger' }).click()
  expect(await width()).toBeCloseTo(first * 2.25, 0)
  await dialog.getByRole('button', { name: 'Smaller' }).click()
  expect(await width()).toBeCloseTo(first * 1.5, 0)
  // All of it is seen then: a square is as wide as the frame is high.
  await dialog.getByRole('button', { name: 'Fit' }).click()
  const frame = dialog.getByRole('group', { name: 'Picture' })
  expect(await width()).toBeCloseTo(await frame.evaluate((node) => node.clientHeight), 0)
  await page.keyboard.press('Escape')
  await dialog.waitFor({ state: 'hidden' })
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Enlarge: day.png')
})

it('lists a file by its name, kind and size, and downloads it', async () => {
  page = await open('?lang=fr')
  await shared('demo-2026-05-04.csv', Buffer.from('a;b\n'.repeat(600)), '')
  const link = page.getByRole('link', { name: /^Télécharger demo-2026-05-04\.csv \(CSV, 2,4\sko\)$/ })
  const [download] = await Promise.all([page.waitForEvent('download'), link.click()])
  expect(download.suggestedFilename()).toBe('demo-2026-05-04.csv')
})

it('tells a screen reader who and the first line, of many how many, of edits that there was one; never what was there before', async () => {
  await app.api('chat.postMessage', { channel: demo, text: 'there before' })
  page = await open('')
  await page.getByText('there before').waitFor()
  const news = page.locator('#news')
  expect(await page.getByRole('log').getAttribute('aria-live')).toBe('off')
  expect(await news.textContent()).toBe('')
  const { ts } = (await app.api('chat.postMessage', { channel: demo, text: '*NO-GO*: spray\nmany\nmore\nlines' })).body
  await expect.poll(() => news.textContent()).toBe('Seamhand, NO-GO: spray')
  await page.getByRole('textbox').fill('mine')
  await page.getByRole('button', { name: 'Send' }).click()
  await page.getByText('mine').waitFor()
  expect(await news.textContent()).toBe('Seamhand, NO-GO: spray')
  await app.api('chat.update', { channel: demo, ts, text: '*GO*: spray' })
  await expect.poll(() => news.textContent()).toBe('Seamhand, changed: GO: spray')
})

it('keeps the place of who stands on a button when its message is edited, and has the reply at the end of a thread', async () => {
  page = await open('')
  const button = (text: string) => [{ type: 'actions', elements: [{ type: 'button', action_id: 'a', text: { type: 'plain_text', text } }] }]
  const { ts } = (await app.api('chat.postMessage', { channel: demo, text: 'x', blocks: button('Open') })).body
  await app.api('chat.postMessage', { channel: demo, text: 'first reply', thread_ts: ts })
  await page.getByRole('log').getByText('first reply').waitFor()
  await page.getByRole('button', { name: 'Open' }).focus()
  await app.api('chat.update', { channel: demo, ts, text: 'x', blocks: button('Changed') })
  await page.getByRole('button', { name: 'Changed' }).waitFor()
  expect(await focused()).toBe('Changed')
  const thread = page.getByRole('article').filter({ hasText: 'first reply' }).first()
  expect(await thread.evaluate((node) => [...node.children].map((child) => child.className || child.tagName))).toEqual([
    'HEADER',
    'body',
    'replies',
    'FOOTER'
  ])
  await thread.getByRole('button', { name: 'Reply' }).press('Enter')
  await page.keyboard.type('second reply')
  await page.keyboard.press('Enter')
  await page.getByRole('group', { name: 'Replies' }).getByText('second reply').waitFor()
})

it('supposes by keys: a quarter of an hour, an hour, the next morning; nothing is sent, Escape leads back', async () => {
  page = await open('?at=2026-05-04T08:07:00Z', 380)
  await page.getByRole('button', { name: 'What would it say at …' }).press('Enter')
  const dialog = page.getByRole('dialog', { name: 'What would it say at …' })
  const slider = dialog.getByRole('slider', { name: 'Day and time at the site' })
  await dialog.getByText('spray at 2026-05-04T08:00:00.000Z <b>').waitFor()
  expect(await slider.getAttribute('aria-valuetext')).toBe('Monday 4 May at 10:00')
  expect(await dialog.textContent()).toContain('no part of the record')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowRight')
  await dialog.getByText('day at 2026-05-04T08:30:00.000Z').waitFor()
  await page.keyboard.press('PageUp')
  await dialog.getByText('day at 2026-05-04T09:30:00.000Z').waitFor()
  await dialog.getByRole('button', { name: '−1 h' }).click()
  await dialog.getByText('day at 2026-05-04T08:30:00.000Z').waitFor()
  await dialog.getByRole('button', { name: 'Next morning' }).click()
  await dialog.getByText('morning at 2026-05-05T03:30:00.000Z').waitFor()
  expect(await slider.getAttribute('aria-valuetext')).toBe('Tuesday 5 May at 05:30')
  await expect.poll(() => dialog.getByRole('button', { name: 'Next morning' }).isDisabled()).toBe(true)
  await slider.press('End')
  await dialog.getByText('day at 2026-05-10T21:45:00.000Z').waitFor()
  expect(await dialog.getByRole('button', { name: '+1 h' }).isDisabled()).toBe(true)
  await slider.press('Home')
  await dialog.getByText('day at 2026-05-03T22:00:00.000Z').waitFor()
  await page.keyboard.press('Escape')
  expect(await focused()).toBe('What would it say at …')
  expect(app.got.filter(({ body }) => body.event?.type !== 'app_home_opened')).toEqual([])
  expect(supposed.every(({ user }) => user === 'U0CREW')).toBe(true)
})

it('offers no supposing where weather is real, and says so when the room is away', async () => {
  page = await open('?site=north')
  expect(await page.getByRole('button', { name: 'What would it say at …' }).count()).toBe(0)
  await page.getByRole('link', { name: /Demo roof/ }).click()
  await page.route('**/room/what-if*', (route) => route.abort())
  await page.getByRole('button', { name: 'What would it say at …' }).click()
  await page.getByRole('dialog').getByText('The room does not answer').waitFor()
  complaints = complaints.filter((text) => !text.includes('ERR_FAILED'))
})
