import chromium from '@sparticuz/chromium'
import { type Browser, chromium as engine } from 'playwright-core'

/** A real Chromium: the one of the package, or that of CHROME_PATH where the package has none for the machine. */
export async function launchBrowser(): Promise<Browser> {
  return engine.launch({
    executablePath: process.env.CHROME_PATH ?? (await chromium.executablePath()),
    args: ['--no-sandbox', '--disable-gpu', '--no-zygote', '--disable-dev-shm-usage'],
    headless: true
  })
}
