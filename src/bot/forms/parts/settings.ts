import type { KnownBlock } from '@slack/types'
import type { SiteSettings } from '../../../core/site.js'
import type { FormValues } from '../../talk/talk.js'
import type { Text } from '../../text/text.js'
import { weekday } from '../../views/clock.js'
import { choiceField, listField, ticksField, timeField } from '../fields.js'
import { type Opened, type Phrase, textOf, ticked } from '../form.js'
import type { Known } from './known.js'

const weekdays = [1, 2, 3, 4, 5, 6, 7] as const

/** The settings of a site as fields: native pickers, nothing to spell. */
export function settingFields(text: Text, known: Known): KnownBlock[] {
  const { site, talk } = text
  const { keys } = site
  const how = { lang: known.lang, units: known.units, zone: 'UTC' }
  const named = (label: string) => label.charAt(0).toUpperCase() + label.slice(1)
  return [
    choiceField('units', named(keys.units), Object.entries(site.units), true),
    choiceField('lang', named(keys.lang), Object.entries(site.langs), true),
    timeField('morning', named(keys.morning)),
    timeField('evening', named(keys.evening)),
    timeField('hoursFrom', talk.fields.hoursFrom),
    timeField('hoursTo', talk.fields.hoursTo),
    ticksField(
      'days',
      named(keys.days),
      weekdays.map((day) => [String(day), weekday(day, how)])
    ),
    ticksField('posts', named(keys.posts), Object.entries(site.posts)),
    ...list('substrate', named(keys.substrate), known.substrates, site.substrates),
    ...list('limits', named(keys.limits), known.limits, {})
  ]
}

function pairs(values: readonly string[], words: Readonly<Record<string, string>>): readonly (readonly [string, string])[] {
  return values.map((value) => [value, words[value] ?? value])
}

/** One choice is none. */
function list(block: string, label: string, values: readonly string[], words: Readonly<Record<string, string>>): KnownBlock[] {
  return values.length < 2 ? [] : [listField(block, label, pairs(values, words))]
}

export function settingValues(settings: Omit<SiteSettings, 'lat' | 'lon' | 'zone'>): FormValues {
  const { hours, days, posts, morning, evening, substrate, limits } = settings
  const [hoursFrom = null, hoursTo = null] = hours.split('-')
  return { units: settings.units, lang: settings.lang, morning, evening, hoursFrom, hoursTo, days: days.map(String), posts, substrate, limits }
}

/** The words for the settings that `said` lets through: of a site that is there, those that were changed. */
export function settingPhrases(values: FormValues, { was }: Opened, said: (block: string) => boolean): readonly Phrase[] {
  const one = (block: string) => (said(block) && textOf(values, block) !== '' ? [{ block, words: `${block} ${textOf(values, block)}` }] : [])
  const many = (block: string, none: string) => (said(block) ? [{ block, words: `${block} ${ticked(values, block).join(',') || none}`.trim() }] : [])
  const [from, to] = [textOf(values, 'hoursFrom') || textOf(was, 'hoursFrom'), textOf(values, 'hoursTo') || textOf(was, 'hoursTo')]
  const hours = (said('hoursFrom') || said('hoursTo')) && from !== '' && to !== '' ? [{ block: 'hoursFrom', words: `hours ${from}-${to}` }] : []
  return [
    ...['units', 'lang', 'morning', 'evening'].flatMap(one),
    ...hours,
    ...many('days', ''),
    ...many('posts', 'off'),
    ...['substrate', 'limits'].flatMap(one)
  ]
}
