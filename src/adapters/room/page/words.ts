import { roomWords } from '../words/index.js'

/** The words of the page, all languages: who changes the language needs no new page. */
export const wordsScript = `
export const all = ${JSON.stringify(roomWords)}
`
