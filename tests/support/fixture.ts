import { readFileSync } from 'node:fs'

/** Text of a file under tests/fixtures. */
export function fixture(path: string): string {
  return readFileSync(new URL(`../fixtures/${path}`, import.meta.url), 'utf8')
}
