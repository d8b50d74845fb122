import type { DetailKind, DetailStatus } from '../../core/log/closing-data.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { clockOf } from './clock.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

const shapeOf = { good: shapes.go, bad: shapes['no-go'], none: '–', unknown: shapes.unknown } as const

/** `detail`: every kind of detail with what was last said of it. */
export function detailView(answer: Answer, how: How, text: Text): Page {
  const { detail } = text.closing
  const lines = rows(answer.numbers, 'details').flatMap((row) => {
    const kind = oneOf<DetailKind>(row, 'kind', detail.kinds)
    if (kind === null) return []
    const status = oneOf<DetailStatus>(row, 'status', detail.statuses) ?? 'unknown'
    const at = clockOf(str(row, 'at'), answer.at, how)
    return [`${shapeOf[status]} ${detail.kinds[kind]}${text.frame.colon}${detail.statuses[status]}${at === null ? '' : `, ${at}`}`]
  })
  return pageOf(answer, { about: detail.title, lines }, how, text)
}
