import type { Browser } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { launchBrowser } from './browser.js'
import { movedClock } from './clock.js'
import { temporaryFolder } from './databases.js'
import { type Serving, startServing } from './serving.js'

/** The whole bot on a folder of its own, and a browser to look at its room. */
export interface Life {
  readonly browser: Browser
  readonly folder: string
  /** Address of the server that runs now. */
  readonly base: string
  /** Another start of the same life; at another time where one is named. */
  restart(iso?: string): Promise<void>
}

/** Begins on a Monday of the invented week, ten in the morning at the demo site, and ends with the tests of the file: call it at the top. */
export function oneLife(): Life {
  const folder = temporaryFolder()
  let browser: Browser
  let clock: ReturnType<typeof movedClock>
  let serving: Serving
  beforeAll(async () => {
    browser = await launchBrowser()
    clock = movedClock('2026-05-04T08:00:00Z')
    serving = await startServing(folder())
  })
  afterAll(async () => {
    await serving.stop()
    clock.stop()
    await browser.close()
  })
  return {
    get browser() {
      return browser
    },
    get folder() {
      return folder()
    },
    get base() {
      return serving.base
    },
    restart: async (iso) => {
      await serving.stop()
      if (iso !== undefined) clock.set(iso)
      serving = await startServing(folder())
    }
  }
}
