import type { Instant } from '../../instant.js'
import { filesIn, type PhotoData } from '../closing-data.js'
import type { Step } from './noted.js'

/** A photo that is kept. */
export interface Photo extends PhotoData {
  readonly at: Instant
  readonly seq: number
}

/** Photos of one subject: kept ones, and those that were named and have not come. */
export interface Photos {
  readonly photos: readonly Photo[]
  readonly awaited: readonly string[]
}

export const noPhotos: Photos = { photos: [], awaited: [] }

/** Adds the photo of a `photo` entry, or notes the ones that another entry names. Hands back the same object where nothing changed. */
export function stepPhotos(before: Photos, { type, data, at, seq }: Step): Photos {
  if (type === 'photo') {
    const photo: Photo = { ...(data as unknown as PhotoData), at, seq }
    const others = before.photos.filter(({ sha256 }) => sha256 !== photo.sha256)
    return { photos: [...others, photo], awaited: before.awaited.filter((file) => file !== photo.file) }
  }
  const kept = new Set(before.photos.map(({ file }) => file))
  const named = filesIn(data).filter((file) => !kept.has(file) && !before.awaited.includes(file))
  return named.length === 0 ? before : { ...before, awaited: [...before.awaited, ...named] }
}
