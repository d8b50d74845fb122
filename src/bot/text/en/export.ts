import type { ExportWords } from '../export-words.js'

export const exportWords: ExportWords = {
  log: (site, date, entries) => `Log of ${site}${date === null ? '' : `, ${date}`}: ${entries}.`,
  packet: (site, days) => `Closeout packet of ${site}: ${days}.`,
  file: (said, path) => `${said} File: ${path}`
}
