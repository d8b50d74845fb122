import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { createCanvas } from '@napi-rs/canvas'
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { type RoomLang, roomWords } from '../../../src/adapters/room/words/index.js'
import { texts } from '../../../src/bot/text/index.js'
import { stickingOut, tooSmall } from '../../support/axe.js'
import { oneLife } from '../../support/life.js'
import { runBeside } from '../../support/serving.js'

/** Where pictures of the days go for people to look at; nowhere unless a folder is named. */
const shots = process.env.ROOM_SHOTS

const life = oneLife()

interface Visitor {
  readonly page: Page
  readonly log: Locator
  readonly lang: RoomLang
  readonly say: (text: string, photo?: string) => Promise<void>
  /** Opens the page anew. */
  readonly back: () => Promise<unknown>
  /** The last answer of Seamhand, once it holds the words. */
  readonly answer: (words: string | RegExp) => Promise<Locator>
  /** Nothing sticks out and nothing is too small, at both widths; a picture of each where a folder is named. */
  readonly look: (name: string, first?: (wide: number) => Promise<unknown>) => Promise<void>
}

async function visit(user: string, lang: RoomLang, width: number, colorScheme: 'light' | 'dark'): Promise<Visitor> {
  const context = await life.browser.newContext({ viewport: { width, height: 800 }, colorScheme, timezoneId: 'Europe/Berlin' })
  const page = await context.newPage()
  page.setDefaultTimeout(20_000)
  const words = roomWords[lang]
  const back = () => page.goto(`${life.base}/?site=demo&user=${user}&lang=${lang}`)
  await back()
  const log = page.getByRole('log', { name: words.messagesName })
  return {
    page,
    log,
    lang,
    back,
    say: async (text, photo) => {
      if (photo !== undefined) await page.getByLabel(words.photo).setInputFiles(photoOf(photo))
      await page.getByRole('textbox', { name: words.messageName }).fill(text)
      await page.getByRole('button', { name: words.sendName, exact: true }).click()
    },
    answer: async (text) => {
      const last = log.locator('.from-seamhand').filter({ hasText: text }).last()
      await last.waitFor()
      return last
    },
    look: async (name, first) => {
      for (const wide of [380, 1280]) {
        await page.setViewportSize({ width: wide, height: 800 })
        await first?.(wide)
        if (shots !== undefined) await shoot(page, `${user}-${name}-${wide}`)
        expect.soft(await stickingOut(page), `${user} ${name} ${wide}`).toBe(0)
        expect.soft(await tooSmall(page), `${user} ${name} ${wide}`).toEqual([])
      }
      await page.setViewportSize({ width, height: 800 })
    }
  }
}

async function shoot(page: Page, name: string): Promise<void> {
  mkdirSync(shots as string, { recursive: true })
  // What a resize set going is drawn in the frame after the next.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))
  await page.screenshot({ path: join(shots as string, `${name}.png`) })
}

/** A photo that could be one: a seam, and a mark on it. */
function photoOf(name: string): { name: string; mimeType: string; buffer: Buffer } {
  const canvas = createCanvas(640, 480)
  const pen = canvas.getContext('2d')
  pen.fillStyle = '#c8c8c4'
  pen.fillRect(0, 0, 640, 480)
  pen.fillStyle = '#9a9a94'
  pen.fillRect(0, 210, 640, 60)
  pen.strokeStyle = '#b02a1c'
  pen.lineWidth = 8
  pen.strokeRect(250, 190, 140, 100)
  return { name, mimeType: 'image/jpeg', buffer: canvas.toBuffer('image/jpeg') }
}

it('a day of the crew, in Spanish', async () => {
  const { page, log, say, answer, look, lang } = await visit('crew', 'es', 380, 'light')
  const { talk } = texts[lang]
  const form = page.getByRole('dialog')
  await say('¿podemos rociar ya?')
  await answer('SIN DATO: rociar')
  await look('asks')

  await say('/spray aire 20 cubierta 20 hr 50 viento 10 racha 15 lluvia 10 % sin trueno mezclado juego 25')
  const state = (await answer('anotado como')).getByRole('button', { name: talk.buttons.checklist })
  await state.click()
  for (const name of [
    talk.fields.dry,
    talk.fields.fleeceDry,
    talk.fields.clean,
    talk.fields.relaxed,
    talk.fields.tight,
    talk.fields.purged,
    talk.fields.nozzle,
    talk.fields.tested
  ])
    await form.getByRole('checkbox', { name, exact: true }).check()
  await form.getByRole('radio', { name: talk.fields.intakesNone }).check()
  await form.getByRole('radio', { name: talk.fields.compatible }).check()
  await form.getByLabel(talk.fields.expiry).fill('2099-01-01')
  await look('checklist')
  await form.getByRole('button', { name: talk.send }).click()
  await answer('✓ SE PUEDE: rociar')
  await look('go')

  await say('/weld robot 36 41 mm película')
  const failed = await answer('NO SE PUEDE')
  await look('coupon-failed')
  await failed.getByRole('button', { name: talk.buttons.coupon }).click()
  await form.getByRole('radio', { name: talk.fields.robot }).check()
  await form.getByLabel(talk.fields.widths).fill('41 42 40')
  await form.getByRole('radio', { name: talk.fields.film }).check()
  await look('coupon-form')
  await form.getByRole('button', { name: talk.send }).click()
  await answer('probeta pasada')
  await look('coupon-passed')

  await say('probe hilera 4 junta 3,2 m 40 mm mojado', 'falla.jpg')
  const open = await answer(/falla 1: hilera 4/)
  await log.getByRole('img', { name: 'falla.jpg' }).waitFor()
  await look('void')
  await open.getByRole('button', { name: talk.buttons.fixed }).click()
  await (await answer(/reparad/)).getByRole('button', { name: talk.buttons.passed }).last().click()
  await answer('✓ SE PUEDE')
  await say('probe hilera 5 traslape 7 m 60 mm')
  await answer(/falla 2: hilera 5/)
  await say('/laid 42 m2 hilera 4 juego K1 robot 20 mano 4')
  await answer('Colocado 42 m²')
  await look('end')
  await page.context().close()
}, 90_000)

it('a day of the supervisor, in English', async () => {
  await life.restart('2026-05-05T03:30:05Z')
  const { page, log, say, answer, look, back } = await visit('supervisor', 'en', 1280, 'light')
  const { talk } = texts.en
  await answer(/spray \(forecast\), demo, 5 May 2026/)
  await log.getByRole('img').last().waitFor()
  await look('morning-post')
  await page.getByRole('region', { name: 'Home' }).getByRole('button', { name: talk.buttons.void }).first().waitFor()
  expect(await page.getByRole('region', { name: 'Home' }).textContent()).not.toContain('no channel')
  await look('home', async (wide) => {
    if (wide < 900) await page.getByRole('link', { name: 'Home' }).click()
  })
  await say('/seamhand start')
  const form = page.getByRole('dialog')
  await form.getByLabel(talk.fields.siteName).fill('north')
  await form.getByLabel(talk.fields.latLon).fill('somewhere')
  await form.getByLabel(talk.fields.zone).fill('Europe/Oslo')
  await form.getByRole('button', { name: talk.send }).click()
  await form.locator('[aria-invalid=true]').waitFor()
  await look('start')
  await form.getByLabel(talk.fields.latLon).fill('59.9, 10.7')
  await form.getByRole('button', { name: talk.send }).click()
  await page.getByRole('navigation', { name: 'Sites' }).getByRole('link', { name: 'north' }).waitFor()
  expect(await (await answer('Site north is set up')).textContent()).not.toMatch(/no channel|invite/)
  await look('started')
  // The new site has a channel of its own, and not that of the site it was made in.
  await say('probe list')
  await answer('void 2')
  await say('/spray override the tent stands over the whole area')
  await answer(/override|goes ahead/i)
  await look('override')

  await life.restart('2026-05-05T16:00:05Z')
  await back()
  await answer(/wrap-up, demo/)
  const link = log.getByRole('link', { name: /^Download .*\.pdf/ }).last()
  await link.waitFor()
  await look('wrap-up')
  const [download] = await Promise.all([page.waitForEvent('download'), link.click()])
  const bytes = readFileSync(await download.path())
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-')
  await page.context().close()
}, 90_000)

it('a day of the inspector, in French', async () => {
  const { page, log, say, answer, look } = await visit('inspector', 'fr', 380, 'dark')
  const words = roomWords.fr
  await say('/probe liste')
  await answer(/défaut 2/)
  await look('voids')
  await say('/spray air 12')
  await answer(/spray|pulvériser/)
  await look('cannot-log')
  await say('/day relevé 2026-05-04')
  await log
    .getByRole('link', { name: /^Télécharger .*\.pdf/ })
    .last()
    .waitFor()
  await look('record')
  await log.getByRole('button', { name: `${words.enlarge}: falla.jpg` }).click()
  await page.getByRole('dialog', { name: 'falla.jpg' }).getByRole('img', { name: 'falla.jpg' }).waitFor()
  await look('zoom')
  await page.keyboard.press('Escape')
  const anchor = /demo:\d+:[0-9a-f]{64}/.exec((await log.textContent()) ?? '')?.[0] ?? ''
  const verified = await runBeside(life.folder, 'verify', ['--json', '--anchor', anchor])
  expect(JSON.parse(verified.out)).toMatchObject({ ok: true })
  await page.getByRole('button', { name: words.whatIf }).click()
  await page.getByRole('dialog').getByRole('heading', { name: words['whatIf-morning'] }).waitFor()
  await look('what-if')
  await page.context().close()
}, 90_000)
