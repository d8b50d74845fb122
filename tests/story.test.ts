import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { oneLife } from './support/life.js'
import { runBeside } from './support/serving.js'

const life = oneLife()

async function open(user: string): Promise<Page> {
  const page = await life.browser.newPage({ viewport: { width: 380, height: 800 } })
  await page.goto(`${life.base}/?site=demo&user=${user}`)
  return page
}

async function say(page: Page, text: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Message' }).fill(text)
  await page.getByRole('button', { name: 'Send' }).click()
}

const log = (page: Page) => page.getByRole('log', { name: 'Messages' })

it('a crew day: ask, checklist by form, coupon, void, the morning post, and a restart that loses nothing', async () => {
  const crew = await open('crew')

  await say(crew, 'can we spray now?')
  await log(crew).getByText('UNKNOWN: spray').waitFor()
  await log(crew).getByRole('button', { name: 'State the checklist' }).click()
  const form = crew.getByRole('dialog')
  await form.getByRole('checkbox', { name: 'Deck dry' }).check()
  for (const name of [
    'Fleece dry',
    'Deck clean',
    'Sheets unrolled and relaxed',
    'No rain now',
    'No thunder heard',
    'Both parts mixed',
    'Hoses tight, no leak',
    'Both parts purged, equal streams',
    'Nozzle on',
    'Test spray good'
  ])
    await form.getByRole('checkbox', { name }).check()
  await form.getByRole('radio', { name: 'None' }).check()
  await form.getByRole('radio', { name: 'Compatible or separated' }).check()
  await form.getByLabel('Kit expires on').fill('2099-01-01')
  await form.getByRole('button', { name: 'Log it' }).click()
  await log(crew).getByText('checklist go').waitFor()

  await say(crew, '/spray air 20 deck 20 rh 50 wind 10 gust 15 rain 10 % mixed kit 25')
  await log(crew).getByText('GO: spray', { exact: false }).last().waitFor()
  await expect.poll(() => log(crew).getByText('✓ GO: spray').count()).toBe(1)

  await say(crew, '/weld robot 36 41 mm film')
  await log(crew).getByText('NO-GO: coupon failed').waitFor()

  await say(crew, '/probe course 4 end 3.2 m 40 mm wet')
  await log(crew).getByRole('button', { name: 'Repaired' }).click()
  await log(crew).getByRole('button', { name: 'Probed: passed' }).click()
  // Probed at once on a warm weld: wait comes before any go, which the list then says.
  await log(crew).getByText('△ WAIT until').first().waitFor()
  await expect.poll(() => log(crew).getByText('✓ GO: close the area').count()).toBe(0)
  await say(crew, '/probe list')
  await log(crew).getByText('✓ GO: close the area').waitFor()
  await expect.poll(() => log(crew).getByText('✓ GO: close the area').count()).toBe(1)

  // The next day at half past five, after a night switched off.
  await life.restart('2026-05-05T03:30:05Z')
  const supervisor = await open('supervisor')
  const post = log(supervisor).getByText(/spray \(forecast\), demo, 5 May 2026/)
  await post.waitFor()
  for (const part of [/spray: .*go/, /lay sheets/, /weld: /, /warm box/, /invented week/]) await log(supervisor).getByText(part).first().waitFor()

  await life.restart()
  const again = await open('supervisor')
  await log(again).getByText('NO-GO: coupon failed').waitFor()
  expect(
    await log(again)
      .getByText(/spray \(forecast\), demo, 5 May 2026/)
      .count()
  ).toBe(1)
  const verified = await runBeside(life.folder, 'verify', ['--json'])
  expect(verified).toMatchObject({ code: 0 })
  const { sites } = JSON.parse(verified.out) as { sites: { site: string; entries: number; firstBad: null }[] }
  expect(sites).toEqual([expect.objectContaining({ site: 'demo', firstBad: null })])
  expect(sites[0]?.entries).toBeGreaterThanOrEqual(12)
}, 120_000)
