import type { ExportWords } from '../export-words.js'

export const exportWords: ExportWords = {
  log: (site, date, entries) => `Registre de ${site}${date === null ? '' : `, ${date}`} : ${entries}.`,
  packet: (site, days) => `Dossier de clôture de ${site} : ${days}.`,
  file: (said, path) => `${said} Fichier : ${path}`
}
