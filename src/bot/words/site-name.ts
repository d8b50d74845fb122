import { fold } from './fold.js'

/** How a site is named: letters, digits and hyphens, a letter or digit first. */
export const siteNameAt = /^[a-z0-9][a-z0-9-]{0,39}$/i

/** What a site that was named freely could be called: `North Roof 2` is `north-roof-2`; null where nothing is left of it. */
export function siteNameOf(typed: string): string | null {
  const name = fold(typed)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-/, '')
    .slice(0, 40)
    .replace(/-$/, '')
  return siteNameAt.test(name) ? name : null
}
