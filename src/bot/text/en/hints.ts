import type { HintWords } from '../hint-words.js'

export const hints: HintWords = {
  date: () => 'Write the day as 2026-12-31 (year-month-day).',
  eitherDate: (said) => `Which day is meant? Write ${said}.`,
  clock: () => 'Write times as 07:00; hours as 07:00-17:00.',
  fahrenheit: (said) => `Fahrenheit? Then write the unit: ${said} F`,
  place: () => 'Write coordinates, latitude first: 41.9,-87.6 or 41.9 N, 87.6 W. A map shows them where the place is pressed or right-clicked.',
  siteName: () => 'Names of sites: letters a to z, digits and hyphens, no spaces.',
  siteRoof: () => 'A site keeps no roof: give the outline each time.',
  noEntries: () => 'Nothing was logged on that day.'
}
