/** What a screen reader is told of news: who, and the first line; of many, how many. The log itself stays silent. */
export const newsScript = String.raw`
import { plain } from './markup.js'
import { nameOf, t } from './talk.js'

const line = document.getElementById('news')
const longest = 140

export function announce(list, known) {
  const told = list.filter((message) => !known(message) || message.edited)
  if (told.length === 0) return
  line.textContent = told.length > 2 ? t('newMessages', { count: told.length }) : told.map((message) => wordsOf(message, known(message))).join('. ')
}

function wordsOf(message, changed) {
  const text = plain(message.text).replace(/[*_${'`'}]/g, '').split('\n')[0].slice(0, longest)
  return nameOf(message.user) + ', ' + (changed ? t('changed', { text }) : text)
}
`
