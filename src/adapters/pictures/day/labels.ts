import { ink, plate, straight, words } from '../svg.js'
import { plot, type Strip, size, spaced } from './layout.js'

export interface EndLabel {
  readonly name: string
  /** Where the line ends. */
  readonly x: number
  readonly y: number
}

const step = 34
const leadTo = plot.right + 10

/** The name of each line beside its end, with a thin lead where it had to move or the line ends early. */
export function endLabels(labels: readonly EndLabel[], strip: Strip): string {
  const places = spaced(
    labels.map(({ y }) => y),
    step,
    { top: strip.top + 6, bottom: strip.bottom - 2 }
  )
  return labels
    .map(({ name, x, y }, index) => {
      const place = places[index] ?? y
      return `${straight(x, y, leadTo, place, ink, 2)}${words(leadTo + 3, place + 10, name, { size: size.label, bold: true })}`
    })
    .join('')
}

/** In the middle of an empty strip: what is missing. */
export function nothing({ top, bottom }: Strip, said: string): string {
  return plate((plot.left + plot.right) / 2, (top + bottom) / 2 + 10, said, size.label)
}
