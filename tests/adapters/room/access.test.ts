import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { type RoomLang, roomWords } from '../../../src/adapters/room/words/index.js'
import { texts } from '../../../src/bot/text/index.js'
import { stickingOut, tooSmall, wrongBy } from '../../support/axe.js'
import { oneLife } from '../../support/life.js'

const life = oneLife()

/** Light and dark, phone and desk, as the page stands: checked by axe-core, sizes of targets on the phone, and nothing wider than the window. */
async function sound(page: Page, where: string): Promise<void> {
  for (const width of [380, 1280]) {
    await page.setViewportSize({ width, height: 800 })
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
      const at = `${where}, ${width} px, ${colorScheme}`
      expect.soft(await wrongBy(page, colorScheme === 'light' ? 'all' : 'colours'), at).toEqual([])
    }
    expect.soft(await tooSmall(page), `${where}, ${width} px`).toEqual([])
    expect.soft(await stickingOut(page), `${where}, ${width} px`).toBe(0)
  }
}

for (const lang of ['en', 'es', 'fr'] as const satisfies readonly RoomLang[])
  it(`the page, a form with its errors, a picture and the slider are accessible in ${lang}`, async () => {
    const words = roomWords[lang]
    const page = await life.browser.newPage({ viewport: { width: 1280, height: 800 } })
    await page.goto(`${life.base}/?site=demo&user=supervisor&lang=${lang}&at=2026-05-04T08:00:00Z`)
    expect.soft(await page.evaluate(() => document.documentElement.lang)).toBe(lang)
    const log = page.getByRole('log', { name: words.messagesName })
    await page.getByRole('textbox', { name: words.messageName }).fill('/day')
    await page.getByRole('button', { name: words.send }).click()
    await log.getByRole('img').first().waitFor()
    await page.getByRole('region', { name: words.home }).getByRole('button').nth(3).waitFor()
    await sound(page, 'page')

    await page.setViewportSize({ width: 1280, height: 800 })
    await page.getByRole('region', { name: words.home }).getByRole('button', { name: texts[lang].talk.buttons.void }).first().click()
    const form = page.getByRole('dialog')
    await form.getByRole('button', { name: texts[lang].talk.send }).click()
    await form.locator('[aria-invalid=true]').first().waitFor()
    await sound(page, 'form')
    await page.keyboard.press('Escape')

    await log.getByRole('button', { name: words.enlarge }).first().click()
    await page.getByRole('dialog').getByRole('img').waitFor()
    await sound(page, 'picture')
    await page.keyboard.press('Escape')

    await page.getByRole('button', { name: words.whatIf }).click()
    await page.getByRole('dialog').getByRole('heading', { name: words['whatIf-morning'] }).waitFor()
    await sound(page, 'slider')
    await page.close()
  }, 60_000)
