import type { TableData } from '../../bot/papers/document.js'

type Cell = TableData['rows'][number][number]

/**
 * A table as RFC 4180 has it: CRLF, quotes where they are needed and doubled inside. A text that a spreadsheet would take for a
 * formula gets an apostrophe in front; numbers stay numbers, with a point.
 */
export function toCsv({ head, rows }: TableData): Uint8Array {
  const lines = [head, ...rows].map((row) => row.map(cellOf).join(','))
  // Spreadsheets take UTF-8 for what it is only with this mark.
  return new TextEncoder().encode(`\uFEFF${lines.map((line) => `${line}\r\n`).join('')}`)
}

function cellOf(cell: Cell): string {
  if (cell === null) return ''
  if (typeof cell !== 'string') return String(cell)
  const safe = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe
}
