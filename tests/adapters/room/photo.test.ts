import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createCanvas } from '@napi-rs/canvas'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launchBrowser } from '../../support/browser.js'
import { runBeside, type Serving, startServing } from '../../support/serving.js'

let folder = ''
let browser: Browser
let serving: Serving

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'seamhand-photo-'))
  browser = await launchBrowser()
  serving = await startServing(folder)
}, 60_000)

afterAll(async () => {
  await serving.stop()
  await browser.close()
  rmSync(folder, { recursive: true })
})

const canvas = createCanvas(40, 30)
const jpeg = { name: 'seam.jpg', mimeType: 'image/jpeg', buffer: canvas.toBuffer('image/jpeg') }
const heic = { name: 'seam.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0mif1heic') }

it('takes a photo with words, by the form with the keyboard alone, and by a shortcut; names a HEIC that calls itself JPEG', {
  timeout: 60_000
}, async () => {
  const page = await browser.newPage({ viewport: { width: 380, height: 800 } })
  await page.goto(`${serving.base}/?site=demo&user=crew`)
  const log = page.getByRole('log', { name: 'Messages' })
  const box = page.getByRole('textbox', { name: 'Message' })

  await page.locator('#photo').setInputFiles(jpeg)
  // With a slash it goes as the same words: a command takes no files.
  await box.fill('/probe course 4 lap 3 m 40 mm')
  await box.press('Enter')
  await log.getByText(/Photo kept: void 1 \(demo-2\)/).waitFor()

  // The shortcut stands at the message with the photo; from there on only keys.
  await log.getByRole('button', { name: 'Log a void' }).first().press('Enter')
  const form = page.getByRole('dialog')
  await form.getByText('1 photo comes along').waitFor()
  await form.getByLabel(/^Course/).fill('5')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Space')
  await form.getByLabel(/Length of the void/).fill('60')
  await form.getByLabel('Photos').setInputFiles(heic)
  await form.getByRole('button', { name: 'Log it' }).press('Enter')
  await log.getByText(/void 2: course 5, side lap, 60 mm long/).waitFor()
  await log.getByText(/Photo kept: void 2/).waitFor()
  await log.getByText(/HEIC/).waitFor()

  const { out } = await runBeside(folder, 'verify', ['--json'])
  expect(JSON.parse(out)).toMatchObject({ ok: true, sites: [{ site: 'demo', entries: 4 }] })
  await page.close()
})
