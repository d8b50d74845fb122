import { source } from 'axe-core'
import type { Page } from 'playwright-core'

interface Violation {
  readonly id: string
  readonly help: string
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[]
}

/**
 * What axe-core finds wrong with a page as it stands, all rules on but its experimental ones: each as a line. `colours`: its rules
 * of contrast alone, for a page that was looked at whole in other colours: nothing but colours has changed since.
 */
export async function wrongBy(page: Page, what: 'all' | 'colours' = 'all'): Promise<readonly string[]> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(source)
  const only = what === 'all' ? '' : ', runOnly: ["color-contrast", "link-in-text-block"]'
  const run = `axe.run(document, { resultTypes: ["violations"]${only} }).then((run) => run.violations)`
  const found = (await page.evaluate(run)) as readonly Violation[]
  return found.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}\n${node.html.slice(0, 200)}\n${node.failureSummary ?? ''}`))
}

/** What a finger cannot hit: shown controls under 44 px either way (WCAG 2.2, 2.5.5). */
export function tooSmall(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button, select, textarea, input[type=range], .pick, .attach, #sites a, a.file, summary')]
      .filter((node) => node.checkVisibility() && (node.getBoundingClientRect().height < 43.5 || node.getBoundingClientRect().width < 43.5))
      .map((node) => node.outerHTML.slice(0, 200))
  )
}

/** How far the page is wider than its window, px: 0 where nothing sticks out. */
export function stickingOut(page: Page): Promise<number> {
  return page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth))
}
