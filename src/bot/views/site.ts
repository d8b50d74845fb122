import type { Json } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import type { SiteWords } from '../text/part-words.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { weekday } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { flag, num, nums, oneOf, row, str, strings } from './read.js'
import { pageOf } from './view.js'

type Settings = Readonly<Record<string, Json>>
const mostSites = 30

/** `site`: what is set, or which sites there are. */
export function siteView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const settings = row(numbers, 'site')
  const names = strings(numbers, 'sites')
  const about = settings === null || answer.site === null ? text.site.sites : text.site.title(escapeText(answer.site, 60))
  const list = names.slice(0, mostSites).map((name) => escapeText(name, 60))
  const more = names.length > mostSites ? [text.frame.more(names.length - mostSites)] : []
  const sites =
    names.length === 0 ? (settings === null ? [text.site.none] : []) : [`${text.site.sites}${text.frame.colon}${[...list, ...more].join(', ')}`]
  return pageOf(answer, { about, lines: [...(settings === null ? [] : settingLines(settings, how, text)), ...sites] }, how, text)
}

export function settingLines(settings: Settings, how: How, text: Text): readonly string[] {
  const { site, frame } = text
  const keys = Object.keys(site.keys) as (keyof SiteWords['keys'])[]
  const lines = keys.flatMap((key) => {
    const value = settingWords(key, settings, how, text)
    return value === null ? [] : [`${site.keys[key]}${frame.colon}${value}`]
  })
  return flag(settings, 'closed') === true ? [...lines, site.closed] : lines
}

function settingWords(key: keyof SiteWords['keys'], settings: Settings, how: How, { site }: Text): string | null {
  switch (key) {
    case 'place':
      return place(settings)
    case 'units':
      return worded(settings, key, site.units)
    case 'lang':
      return worded(settings, key, site.langs)
    case 'substrate':
      return worded(settings, key, site.substrates)
    case 'posts':
      return (
        strings(settings, key)
          .map((post) => site.posts[post] ?? escapeText(post, 40))
          .join(', ') || site.noPosts
      )
    case 'days':
      return (
        nums(settings, key)
          .map((day) => weekday(day, how))
          .join(' ') || null
      )
    case 'roof':
      return roof(settings, how, site)
    case 'channel':
      return str(settings, key) === null ? site.noChannel : escapeText(str(settings, key) ?? '', 60)
    default:
      return str(settings, key) === null ? null : escapeText(str(settings, key) ?? '', 60)
  }
}

function worded(settings: Settings, key: string, words: Readonly<Record<string, string>>): string | null {
  const known = oneOf<string>(settings, key, words)
  if (known !== null) return words[known] ?? null
  const value = str(settings, key)
  return value === null ? null : escapeText(value, 60)
}

/** As it is typed: decimal points, latitude first. */
function place(settings: Settings): string | null {
  const [lat, lon] = [num(settings, 'lat'), num(settings, 'lon')]
  return lat === null || lon === null ? null : `${lat},${lon}`
}

function roof(settings: Settings, how: How, site: SiteWords): string | null {
  const size = row(settings, 'roof')
  if (size === null) return null
  const metres = (name: string) => amount(num(size, name) ?? 0, 'm', how)
  return site.roof(metres('widthM'), metres('depthM'), metres('heightM'))
}
