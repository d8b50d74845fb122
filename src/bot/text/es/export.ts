import type { ExportWords } from '../export-words.js'

export const exportWords: ExportWords = {
  log: (site, date, entries) => `Registro de ${site}${date === null ? '' : `, ${date}`}: ${entries}.`,
  packet: (site, days) => `Expediente de cierre de ${site}: ${days}.`,
  file: (said, path) => `${said} Archivo: ${path}`
}
