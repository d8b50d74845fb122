import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { channelIdOf } from '../../../src/adapters/room/index.js'
import { launchBrowser } from '../../support/browser.js'
import { type FakeApp, type Loose, startRoom } from '../../support/room.js'

const demo = channelIdOf('demo')
const shots = process.env.ROOM_SHOTS

let browser: Browser
let app: FakeApp
let page: Page
let complaints: string[]

beforeAll(async () => {
  browser = await launchBrowser()
})
afterAll(() => browser.close())
beforeEach(async () => {
  app = await startRoom()
  page = await open()
})
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()))
  await app.close()
  expect(complaints, 'what the browser complained of').toEqual([])
})

/** A page whose errors, and breaches of its own policy, fail the test. */
async function open(
  query = '',
  size: { width: number; height: number } = { width: 1280, height: 800 },
  scheme: 'light' | 'dark' = 'light'
): Promise<Page> {
  const context = await browser.newContext({ viewport: size, colorScheme: scheme, timezoneId: 'Europe/Berlin' })
  const made = await context.newPage()
  complaints = []
  made.on('pageerror', (error) => complaints.push(error.message))
  made.on('console', (message) => message.type() === 'error' && complaints.push(message.text()))
  await made.goto(`${app.base}/${query}`)
  await made.getByRole('link', { name: /Demo roof/ }).waitFor()
  return made
}

const log = (on = page) => on.getByRole('log', { name: 'Messages' })
const box = (on = page) => on.getByRole('textbox', { name: 'Message' })
const send = async (text: string, on = page) => {
  await box(on).fill(text)
  await on.getByRole('button', { name: 'Send' }).click()
}
const plain = (text: string) => ({ type: 'plain_text', text })
const mrkdwn = (text: string) => ({ type: 'mrkdwn', text })
const png = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64')

/** A picture of the bot's, in a channel where one is named: a message of its own there. */
async function picture(channel?: string): Promise<string> {
  const place = (await app.api('files.getUploadURLExternal', { filename: 'sky.png', length: String(png.length) })).body
  await fetch(place.upload_url, { method: 'POST', body: new Uint8Array(png) })
  await app.api('files.completeUploadExternal', { files: [{ id: place.file_id }], ...(channel === undefined ? {} : { channel_id: channel }) })
  await app.until(async () => (await app.api('files.info', { file: place.file_id })).body.file.mimetype)
  return place.file_id as string
}

const everyBlock = (file: string): object[] => [
  { type: 'header', text: plain('Spray: no-go — wind 42 km/h') },
  {
    type: 'section',
    text: mrkdwn(
      '*Wind* is over the limit of 25 km/h.\n_Wait_ until `14:00`, or <https://example.org/limits|read why> &lt;here&gt;. <!date^1777875000^{time}|06:10>'
    )
  },
  { type: 'section', fields: [mrkdwn('*Air* 12.5 °C'), mrkdwn('*Substrate* 14 °C'), mrkdwn('*Dew point* 6 °C'), mrkdwn('*Gust* 55 km/h')] },
  { type: 'section', text: mrkdwn('Kit K7'), accessory: { type: 'button', action_id: 'kit', text: plain('Read the kit') } },
  { type: 'divider' },
  { type: 'image', slack_file: { id: file }, alt_text: 'Wind falls below 25 km/h at 14:00', title: plain('Wind today') },
  { type: 'context', elements: [mrkdwn('Limits common-practice 1'), mrkdwn('_invented weather_')] },
  {
    type: 'actions',
    elements: [
      { type: 'button', action_id: 'state', style: 'primary', text: plain('State 5 checks'), value: 'demo' },
      {
        type: 'button',
        action_id: 'undo',
        style: 'danger',
        text: plain('Undo'),
        confirm: {
          title: plain('Undo this?'),
          text: plain('The entry stays in the log, marked as undone.'),
          confirm: plain('Undo it'),
          deny: plain('Keep it')
        }
      },
      {
        type: 'static_select',
        action_id: 'more',
        placeholder: plain('Details'),
        options: [
          { text: plain('Findings'), value: 'f' },
          { text: plain('Windows'), value: 'w' }
        ]
      }
    ]
  }
]

const form = {
  type: 'modal',
  callback_id: 'coupon',
  title: plain('Coupon'),
  submit: plain('Log it'),
  close: plain('Not now'),
  blocks: [
    { type: 'section', text: mrkdwn('Robot, *narrowest* place counts.') },
    {
      type: 'input',
      block_id: 'width',
      label: plain('Width, mm'),
      hint: plain('As measured'),
      element: { type: 'number_input', action_id: 'v', is_decimal_allowed: true }
    },
    {
      type: 'input',
      block_id: 'peel',
      label: plain('Peel'),
      element: {
        type: 'radio_buttons',
        action_id: 'v',
        options: [
          { text: plain('film off the scrim'), value: 'film' },
          { text: plain('faces part'), value: 'parted' }
        ]
      }
    },
    {
      type: 'input',
      block_id: 'welder',
      label: plain('Welder'),
      element: {
        type: 'static_select',
        action_id: 'v',
        options: [
          { text: plain('robot'), value: 'robot' },
          { text: plain('hand'), value: 'hand' }
        ]
      }
    },
    {
      type: 'input',
      block_id: 'checks',
      optional: true,
      label: plain('Checks'),
      element: {
        type: 'checkboxes',
        action_id: 'v',
        options: [
          { text: plain('lap clean'), value: 'clean' },
          { text: plain('lap dry'), value: 'dry', description: plain('wiped and dried') }
        ]
      }
    },
    {
      type: 'input',
      block_id: 'day',
      optional: true,
      label: plain('Day'),
      element: { type: 'datepicker', action_id: 'v', initial_date: '2026-05-04' }
    },
    { type: 'input', block_id: 'time', optional: true, label: plain('Time'), element: { type: 'timepicker', action_id: 'v' } },
    { type: 'input', block_id: 'note', optional: true, label: plain('Note'), element: { type: 'plain_text_input', action_id: 'v', multiline: true } },
    {
      type: 'input',
      block_id: 'photo',
      optional: true,
      label: plain('Photo'),
      element: { type: 'file_input', action_id: 'v', filetypes: ['png', 'jpg'], max_files: 1 }
    }
  ]
}

/** The app opens the form when a button is pressed, as a real one does: with the trigger. */
function openFormOnPress(answer: (body: Loose) => unknown): void {
  app.onDelivery = async ({ body }) => {
    if (body.type === 'block_actions') await app.api('views.open', { trigger_id: body.trigger_id, view: form })
    return body.type === 'view_submission' ? { body: answer(body) } : {}
  }
}

describe('messages', () => {
  it('go out and come back, with every kind of block drawn', async () => {
    const blocks = everyBlock(await picture())
    app.onDelivery = ({ body }) => (body.command === '/spray' ? { body: { response_type: 'in_channel', text: 'No-go', blocks } } : {})
    await send('/spray wind 42')
    const answer = log().getByRole('article', { name: /^Seamhand/ })
    await answer.getByRole('heading', { name: 'Spray: no-go — wind 42 km/h' }).waitFor()
    expect(await log().getByRole('article', { name: /^Crew/ }).textContent()).toContain('/spray wind 42')
    expect(await answer.locator('strong').first().textContent()).toBe('Wind')
    expect(await answer.locator('em').first().textContent()).toBe('Wait')
    expect(await answer.locator('code').textContent()).toBe('14:00')
    expect(await answer.getByRole('link', { name: 'read why' }).getAttribute('href')).toBe('https://example.org/limits')
    expect(await answer.locator('.body time').textContent()).toMatch(/08:10/)
    expect(await answer.textContent()).toContain('<here>')
    await expect.poll(() => answer.getByRole('listitem').count()).toBe(4)
    const image = answer.getByRole('img', { name: 'Wind falls below 25 km/h at 14:00' })
    expect(await image.evaluate((node: HTMLImageElement) => node.decode().then(() => node.naturalWidth))).toBe(1)
    await answer.getByRole('combobox', { name: 'Details' }).selectOption({ label: 'Windows' })
    const picked = await app.until(() => app.got.find(({ body }) => body.actions?.[0].action_id === 'more'))
    expect(picked.body.actions[0].selected_option.value).toBe('w')
    expect(await box().inputValue()).toBe('')
  })

  it('show what people wrote as text and nothing more', async () => {
    await send('<img src=x onerror=alert(1)> *not bold* <!channel>')
    await log().getByText('<img src=x onerror=alert(1)> *not bold* <!channel>').waitFor()
    await app.api('chat.postMessage', { channel: demo, text: '<img src=x onerror=alert(1)> <javascript:alert(1)|press> *<b>bold</b>*' })
    await log().getByText('<img src=x onerror=alert(1)> <javascript:alert(1)|press>').waitFor()
    expect(await log().locator('img, a, b').count()).toBe(0)
  })

  it('are marked when they are for one person only, and nobody else has them', async () => {
    app.onDelivery = () => ({ body: { text: 'Help is here' } })
    const supervisor = await open('?user=supervisor')
    await send('/seamhand help')
    await log().getByText('Help is here').waitFor()
    await expect.poll(() => log().getByText('only for you').count()).toBe(2)
    await app.api('chat.postMessage', { channel: demo, text: 'For all' })
    await log(supervisor).getByText('For all').waitFor()
    expect(await log(supervisor).getByText('Help is here').count()).toBe(0)
  })

  it('are edited in place, answered in threads, and taken away', async () => {
    const { ts } = (await app.api('chat.postMessage', { channel: demo, text: 'first words' })).body
    await log().getByText('first words').waitFor()
    await app.api('chat.update', { channel: demo, ts, text: 'second words' })
    await log().getByText('second words').waitFor()
    await expect.poll(() => log().getByText('edited').count()).toBe(1)
    await log().getByRole('button', { name: 'Reply' }).click()
    await send('a reply')
    const replies = log().getByRole('group', { name: 'Replies' })
    await replies.getByText('a reply').waitFor()
    expect((await app.until(() => app.got.find(({ body }) => body.event?.type === 'app_mention'))).body.event.thread_ts).toBe(ts)
    await app.api('chat.update', { channel: demo, ts, text: 'third words' })
    await log().getByText('third words').waitFor()
    await expect.poll(() => replies.getByText('a reply').count()).toBe(1)
    await app.api('chat.delete', { channel: demo, ts })
    await log().getByText('third words').waitFor({ state: 'detached' })
  })

  it('leave a reader where she is, and show the head of an answer longer than the screen', async () => {
    for (let i = 0; i < 5; i += 1) await app.api('chat.postMessage', { channel: demo, text: `message ${i}` })
    const long = Array.from({ length: 60 }, (_none, i) => `line ${i}`).join('\n')
    await app.until(async () => (await app.api('chat.postMessage', { channel: demo, text: long })).status === 200)
    await log().getByText('line 59').waitFor()
    const shows = (text: string) =>
      log()
        .getByText(text)
        .evaluate((node) => {
          const { top } = node.getBoundingClientRect()
          return top > 0 && top < innerHeight
        })
    expect(await shows('line 0')).toBe(true)
    await log().hover()
    await page.mouse.wheel(0, -10_000)
    await app.until(() => shows('message 0'))
    await new Promise((resolve) => setTimeout(resolve, 200))
    await app.api('chat.postEphemeral', { channel: demo, user: 'U0CREW', text: 'news' })
    await log().getByText('news').waitFor()
    expect(await shows('message 0')).toBe(true)
    await send('back to now')
    await log().getByText('back to now').waitFor()
    await app.until(() => shows('back to now'))
  })

  it.each([
    [380, 800],
    [1280, 800]
  ])('show the head of an answer and not its end, where there is no room for both: %d px', async (width, height) => {
    await page.setViewportSize({ width, height })
    for (let i = 0; i < 5; i += 1) await app.api('chat.postMessage', { channel: demo, text: `message ${i}` })
    await send('/spray')
    await log().getByText('/spray').waitFor()
    const free = await page.evaluate(() => {
      const [head = 0, write = 0] = ['.site-head', '.composer'].map((name) => document.querySelector<HTMLElement>(name)?.offsetHeight)
      return innerHeight - head - write
    })
    // A third more than there is room for, in lines of at least 20 px; a picture comes after it, as of a day.
    const lines = ['OUTCOME', ...Array.from({ length: Math.ceil(free / 27) }, (_none, i) => `line ${i}`), 'END OF IT']
    await app.until(async () => (await app.api('chat.postMessage', { channel: demo, text: lines.join('\n') })).status === 200)
    await log().getByText('END OF IT').waitFor()
    const seen = (text: string) =>
      log()
        .getByText(text)
        .first()
        .evaluate((node) => {
          const { top } = node.closest('.message')?.getBoundingClientRect() ?? { top: -1 }
          const over = document.querySelector('.site-head')?.getBoundingClientRect().bottom ?? 0
          return top >= over - 1 && top < innerHeight / 2
        })
    await app.until(() => seen('OUTCOME'))
    await picture(demo)
    await expect.poll(() => log().getByRole('img').count()).toBeGreaterThan(0)
    expect(await seen('OUTCOME')).toBe(true)
  })

  it('tell what went wrong in words', async () => {
    app.onDelivery = () => ({ status: 500 })
    await send('/spray')
    await log().getByText('/spray failed: the app answered 500.').waitFor()
  })

  it('stay with the site they were written in', async () => {
    await app.api('chat.postMessage', { channel: 'C0NORTH', text: 'north words' })
    await page.getByRole('navigation', { name: 'Sites' }).getByRole('link', { name: 'North hall' }).click()
    await log().getByText('north words').waitFor()
    expect(new URL(page.url()).searchParams.get('site')).toBe('north')
    await page.getByRole('link', { name: /Demo roof/ }).click()
    await log().getByText('north words').waitFor({ state: 'detached' })
    await expect.poll(() => page.getByText('Invented site, invented weather').count()).toBe(1)
  })
})

describe('forms', () => {
  beforeEach(async () => {
    openFormOnPress((body) =>
      body.view.state.values.width.v.value === '12.5' ? { response_action: 'errors', errors: { width: 'Narrower than 40 mm' } } : {}
    )
    await app.api('chat.postMessage', {
      channel: demo,
      text: 'x',
      blocks: [{ type: 'actions', elements: [{ type: 'button', action_id: 'state', text: plain('State checks') }] }]
    })
    await log().getByRole('button', { name: 'State checks' }).click()
    await page.getByRole('dialog', { name: 'Coupon' }).waitFor()
  })

  it('are filled in by their labels; what is wrong stands at its field; what was typed stays', async () => {
    const dialog = page.getByRole('dialog', { name: 'Coupon' })
    await dialog.getByRole('button', { name: 'Log it' }).click()
    await dialog.getByText('Please fill this in.').first().waitFor()
    await expect.poll(() => dialog.getByText('Please fill this in.').count()).toBe(3)
    await dialog.getByLabel('Width, mm').fill('12,5')
    await dialog.getByRole('radio', { name: 'film off the scrim' }).check()
    await dialog.getByLabel('Welder').selectOption('robot')
    await dialog.getByRole('checkbox', { name: /lap dry/ }).check()
    await dialog.getByLabel('Time').fill('07:30')
    await dialog.getByLabel('Note').fill('first of the day')
    await dialog.getByLabel('Photo').setInputFiles({ name: 'seam.png', mimeType: 'image/png', buffer: png })
    await dialog.getByRole('button', { name: 'Log it' }).click()
    await dialog.getByText('Narrower than 40 mm').waitFor()
    expect(await dialog.getByLabel('Width, mm').getAttribute('aria-invalid')).toBe('true')
    expect(await dialog.getByLabel('Note').inputValue()).toBe('first of the day')
    await dialog.getByLabel('Width, mm').fill('41')
    await dialog.getByRole('button', { name: 'Log it' }).click()
    await dialog.waitFor({ state: 'hidden' })
    const { values } = app.got.findLast(({ body }) => body.type === 'view_submission')!.body.view.state
    expect(values).toMatchObject({
      width: { v: { value: '41' } },
      peel: { v: { selected_option: { value: 'film' } } },
      welder: { v: { selected_option: { value: 'robot' } } },
      checks: { v: { selected_options: [{ value: 'dry' }] } },
      day: { v: { selected_date: '2026-05-04' } },
      time: { v: { selected_time: '07:30' } },
      note: { v: { value: 'first of the day' } },
      photo: { v: { files: [{ name: 'seam.png' }] } }
    })
    const photo = await fetch(values.photo.v.files[0].url_private)
    expect(Buffer.from(await photo.arrayBuffer())).toEqual(png)
  })

  it('say once that all may be left empty, and speak the language of the page', async () => {
    await page.keyboard.press('Escape')
    await page.getByRole('radio', { name: 'Français' }).check()
    const free = form.blocks.map((block) => ({ ...block, ...(block.type === 'input' ? { optional: true } : {}) }))
    app.onDelivery = async ({ body }) => {
      if (body.type === 'block_actions') await app.api('views.open', { trigger_id: body.trigger_id, view: { ...form, blocks: free } })
      return {}
    }
    await log().getByRole('button', { name: 'State checks' }).click()
    const dialog = page.getByRole('dialog', { name: 'Coupon' })
    await dialog.getByText('Chacun peut rester vide.').waitFor()
    expect(await dialog.getByText('peut rester vide)').count()).toBe(0)
    await dialog.getByLabel('Width, mm').fill('large')
    await dialog.getByRole('button', { name: 'Log it' }).click()
    await dialog.getByText('Écrivez un nombre').waitFor()
  })

  it('are closed by Escape', async () => {
    await page.keyboard.press('Escape')
    await page.getByRole('dialog', { name: 'Coupon' }).waitFor({ state: 'hidden' })
  })
})

it('asks once more before a button that says so', async () => {
  await app.api('chat.postMessage', { channel: demo, text: 'x', blocks: everyBlock(await picture()) })
  await log().getByRole('button', { name: /Undo/ }).click()
  const sure = page.getByRole('dialog', { name: 'Undo this?' })
  await sure.getByRole('button', { name: 'Keep it' }).click()
  expect(app.got.filter(({ body }) => body.type === 'block_actions')).toEqual([])
  await log().getByRole('button', { name: /Undo/ }).click()
  await sure.getByRole('button', { name: 'Undo it' }).click()
  await app.until(() => app.got.find(({ body }) => body.actions?.[0].action_id === 'undo'))
})

it('draws the home of the person, and asks for it', async () => {
  app.onDelivery = async ({ body }) => {
    if (body.event?.type === 'app_home_opened') {
      await app.api('views.publish', {
        user_id: body.event.user,
        view: {
          type: 'home',
          blocks: [
            { type: 'section', text: mrkdwn(`Sites of ${body.event.user}`) },
            { type: 'actions', elements: [{ type: 'button', action_id: 'open', text: plain('Open voids') }] }
          ]
        }
      })
    }
    return {}
  }
  await page.reload()
  const home = page.getByRole('region', { name: 'Home' })
  await home.getByText('Sites of U0CREW').waitFor()
  await home.getByRole('button', { name: 'Open voids' }).click()
  expect((await app.until(() => app.got.find(({ body }) => body.type === 'block_actions'))).body).toMatchObject({
    container: { type: 'view' },
    view: { type: 'home' }
  })
  await page.getByRole('radio', { name: 'Supervisor' }).check()
  await home.getByText('Sites of U0SUPERVISOR').waitFor()
})

it('passes language, units and the held clock on, and shows them', async () => {
  page = await open('?site=demo&user=inspector&lang=fr&units=us&at=2026-05-04T06:10:00Z')
  await page.getByText(/L’horloge est arrêtée\s: lundi 4 mai 2026(,| à) 08:10, heure du chantier\./).waitFor()
  await page.getByRole('textbox', { name: 'Message' }).fill('on peut pulvériser ?')
  await page.getByRole('button', { name: 'Envoyer' }).click()
  const mention = await app.until(() => app.got.find(({ body }) => body.event?.type === 'app_mention'))
  expect(mention.body).toMatchObject({ room: { lang: 'fr', units: 'us', at: '2026-05-04T06:10:00Z' }, event: { user: 'U0INSPECTOR' } })
  expect((await app.api('users.info', { user: 'U0INSPECTOR', include_locale: true })).body.user.locale).toBe('fr-FR')
})

it.each([
  ['demo', 'en', /The clock is held: Monday,? 4 May 2026(,| at) 08:10, site time\./],
  ['north', 'es', 'El reloj está parado: lunes, 4 de mayo de 2026, 00:10, hora de la obra.'],
  ['@seamhand', 'en', /The clock is held: Monday,? 4 May 2026(,| at) 06:10 UTC\./]
])('shows a held clock as the clocks of %s do, in words of %s', async (site, lang, said) => {
  page = await open(`?site=${site}&user=crew&lang=${lang}&at=2026-05-04T06:10:00Z`)
  await page.locator('#site-note').getByText(said).waitFor()
})

it.each([380, 900, 1280])('keeps the words of the heading clear of its button: %d px', async (width) => {
  page = await open('?site=demo&user=crew&lang=fr&at=2026-05-04T06:10:00Z')
  await page.setViewportSize({ width, height: 800 })
  await page.locator('#site-note').getByText('2026').waitFor()
  const over = await page.evaluate(() => {
    const head = document.querySelector('.site-head') as HTMLElement
    // The stand-in of the tests supposes nothing: a button like the one of the room.
    const button = head.querySelector('button') ?? head.insertBefore(document.createElement('button'), document.getElementById('site-note'))
    button.hidden = false
    if (button.textContent === '') button.textContent = 'Que dirait-il à … ?'
    const [a, b] = [button, document.getElementById('site-note') as HTMLElement].map((node) => node.getBoundingClientRect()) as [DOMRect, DOMRect]
    return a.left < b.right && b.left < a.right && a.top < b.bottom - 1 && b.top < a.bottom - 1
  })
  expect(over).toBe(false)
})

it('takes no instant that is on no calendar', async () => {
  page = await open('?site=demo&at=2026-13-45T99:10:00Z')
  await page.getByText('The time in the address is not one').waitFor()
  expect(await page.locator('#site-note').textContent()).not.toContain('held')
})

it('can be used by keys alone', async () => {
  openFormOnPress(() => ({}))
  await page.keyboard.press('Tab')
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the message box')
  await page.keyboard.press('Enter')
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('message')
  await page.keyboard.type('/s')
  const list = page.getByRole('listbox', { name: 'Commands' })
  await expect.poll(() => list.getByRole('option').count()).toBe(5)
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  expect(await list.getByRole('option', { selected: true }).textContent()).toContain('/strip')
  await page.keyboard.press('Enter')
  expect(await box().inputValue()).toBe('/strip ')
  await page.keyboard.type('2 m gap 6')
  await page.keyboard.press('Enter')
  expect((await app.until(() => app.got.find(({ body }) => body.command === '/strip'))).body.text).toBe('2 m gap 6')
  await app.api('chat.postMessage', {
    channel: demo,
    text: 'x',
    blocks: [{ type: 'actions', elements: [{ type: 'button', action_id: 'state', text: plain('State checks') }] }]
  })
  await log().getByRole('button', { name: 'State checks' }).waitFor()
  for (let i = 0; i < 8 && (await page.evaluate(() => document.activeElement?.textContent)) !== 'State checks'; i += 1)
    await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('Enter')
  await page.getByRole('dialog', { name: 'Coupon' }).waitFor()
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('field1')
})

it('sends a photo with a message', async () => {
  await page.getByLabel('Photo').setInputFiles({ name: 'void.png', mimeType: 'image/png', buffer: png })
  await send('the void at course 4')
  await log().getByRole('img', { name: 'void.png' }).waitFor()
  expect((await app.until(() => app.got.find(({ body }) => body.event?.type === 'app_mention'))).body.event.files).toMatchObject([
    { name: 'void.png' }
  ])
})

it('keeps its messages through a restart, but not what was for one person', async () => {
  await page.close()
  await app.close()
  const folder = mkdtempSync(join(tmpdir(), 'room-'))
  app = await startRoom({ folder })
  await app.api('chat.postMessage', { channel: demo, text: 'kept' })
  await app.api('chat.postEphemeral', { channel: demo, user: 'U0CREW', text: 'lost' })
  await app.close()
  app = await startRoom({ folder })
  page = await open()
  await log().getByText('kept').waitFor()
  expect(await log().getByText('lost').count()).toBe(0)
  await page.close()
  await app.close()
  app = await startRoom()
  rmSync(folder, { recursive: true })
})

describe('the width of a phone', () => {
  for (const [width, scheme] of [
    [380, 'light'],
    [380, 'dark'],
    [1280, 'light'],
    [1280, 'dark']
  ] as const) {
    it(`shows all of it at ${width} px, ${scheme}`, async () => {
      openFormOnPress(() => ({ response_action: 'errors', errors: { width: 'Narrower than 40 mm' } }))
      page = await open('', { width, height: 800 }, scheme)
      await app.api('views.publish', {
        user_id: 'U0CREW',
        view: {
          type: 'home',
          blocks: [
            { type: 'header', text: plain('My sites now') },
            { type: 'section', text: mrkdwn('*Demo roof* — conditions go, 5 checks to state') },
            { type: 'actions', elements: [{ type: 'button', action_id: 'x', style: 'primary', text: plain('Start the day') }] }
          ]
        }
      })
      await send('can we spray now?')
      await app.api('chat.postMessage', { channel: demo, text: 'No-go', blocks: everyBlock(await picture()) })
      await app.api('chat.postEphemeral', {
        channel: demo,
        user: 'U0CREW',
        text: 'A word that only the asker sees: `wind 40 kmh` was not understood.'
      })
      await log().getByText('A word that only').waitFor()
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('button, select, textarea, .pick, .attach, #sites a')]
          .filter((node) => node.checkVisibility() && (node.getBoundingClientRect().height < 43.5 || node.getBoundingClientRect().width < 43.5))
          .map((node) => node.outerHTML)
      )
      expect(small).toEqual([])
      await shoot(`${width}-${scheme}-log`)
      await box().fill('/s')
      await shoot(`${width}-${scheme}-suggest`)
      await box().fill('')
      await log().getByRole('button', { name: 'State 5 checks' }).click()
      await page.getByRole('dialog', { name: 'Coupon' }).waitFor()
      await page.getByRole('button', { name: 'Log it' }).click()
      await shoot(`${width}-${scheme}-form`)
    })
  }
})

/** Pictures for people to look at, where a folder is named. */
async function shoot(name: string): Promise<void> {
  if (shots === undefined) return
  mkdirSync(shots, { recursive: true })
  await page.screenshot({ path: join(shots, `${name}.png`) })
}

describe('who may ask', () => {
  it('is only the page itself', async () => {
    const status = async (path: string, headers: Record<string, string>, body?: Loose) => (await app.page(path, body, headers)).status
    expect(await status('/room/messages?site=demo', {})).toBe(200)
    expect(await status('/room/messages?site=demo', { 'x-room-key': 'wrong' })).toBe(403)
    expect(await status('/room/messages?site=demo', { origin: app.base })).toBe(200)
    expect(await status('/room/messages?site=demo', { origin: 'http://elsewhere.example' })).toBe(403)
    expect(await status('/room/messages?site=demo', { origin: 'null' })).toBe(403)
    expect(await status('/room/messages?site=none', {})).toBe(404)
    expect(await status('/room/say', {}, { site: 'demo', user: 'nobody', text: 'x' })).toBe(400)
    expect(await status('/room/say', {}, { site: 'demo', user: 'crew', text: ' ' })).toBe(400)
    expect(await status('/room/say', {}, { site: 'demo', user: 'crew', text: 'x'.repeat(70_000) })).toBe(413)
    expect(await status('/room/nothing', {})).toBe(404)
  })

  it('by a name of this machine with the right port', async () => {
    const { request } = await import('node:http')
    const status = (host: string, path: string) =>
      new Promise((resolve) => {
        request(app.base + path, { headers: { host } }, (response) => resolve(response.resume().statusCode)).end()
      })
    const { port } = new URL(app.base)
    expect(await status(`localhost:${port}`, '/')).toBe(200)
    expect(await status(`[::1]:${port}`, '/')).toBe(200)
    for (const host of ['localhost', `evil.example:${port}`, '127.0.0.1:1', `127.0.0.1.evil.example:${port}`]) {
      for (const path of ['/', '/room/messages?site=demo', '/api/auth.test', '/room/assets/page.css'])
        expect(await status(host, path), host + path).toBe(403)
    }
  })

  it('under a policy that allows nothing inline and nothing from elsewhere', async () => {
    const response = await fetch(app.base)
    expect(response.headers.get('content-security-policy')).toBe(
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'"
    )
    const text = await response.text()
    expect(text).not.toMatch(/\son\w+=|<style|style=|<script(?![^>]*src="\/room)|https?:\/\//)
  })
})
