/** What helps with one kind of slip, beside what was wrong. */
export const hintIds = ['date', 'eitherDate', 'clock', 'fahrenheit', 'place', 'siteName', 'siteRoof', 'noEntries'] as const
export type HintId = (typeof hintIds)[number]

/** `said`: the word that was refused or what it may mean, escaped. */
export type HintWords = Readonly<Record<HintId, (said: string) => string>>
