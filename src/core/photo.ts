import type { PhotoMime } from './log/closing-data.js'

/** Bytes of a photo at the most: a phone's largest JPEG, and what a database still likes. */
export const photoMaxBytes = 8 * 1024 * 1024

export type PhotoProblem = 'empty' | 'too-large' | 'heic' | 'not-a-photo' | 'damaged'

export type PhotoLooked =
  | { readonly ok: true; readonly mime: PhotoMime; readonly widthPx: number; readonly heightPx: number }
  | { readonly ok: false; readonly problem: PhotoProblem }

/**
 * What the bytes of a file are, by themselves and never by its name: a JPEG (ISO/IEC 10918-1, its frame header) or a PNG (W3C PNG,
 * its IHDR) with a size; a HEIC of a phone (ISO/IEC 23008-12, its brand) is named, since it is what phones send.
 */
export function lookAtPhoto(bytes: Uint8Array): PhotoLooked {
  if (bytes.length === 0) return no('empty')
  if (bytes.length > photoMaxBytes) return no('too-large')
  if (begins(bytes, 0, [0xff, 0xd8, 0xff])) return sized('image/jpeg', jpegSize(bytes))
  if (begins(bytes, 0, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return sized('image/png', pngSize(bytes))
  return no(begins(bytes, 4, [0x66, 0x74, 0x79, 0x70]) && heicBrands.has(ascii(bytes, 8)) ? 'heic' : 'not-a-photo')
}

const heicBrands: ReadonlySet<string> = new Set(['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1', 'avif'])

type Size = readonly [widthPx: number, heightPx: number]

function no(problem: PhotoProblem): PhotoLooked {
  return { ok: false, problem }
}

function sized(mime: PhotoMime, size: Size | null): PhotoLooked {
  if (size === null || !(size[0] >= 1 && size[1] >= 1)) return no('damaged')
  return { ok: true, mime, widthPx: size[0], heightPx: size[1] }
}

function begins(bytes: Uint8Array, from: number, head: readonly number[]): boolean {
  return head.every((byte, i) => bytes[from + i] === byte)
}

function ascii(bytes: Uint8Array, from: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + 4))
}

/** Big-endian; null past the end. */
function word(bytes: Uint8Array, at: number): number | null {
  const [high, low] = [bytes[at], bytes[at + 1]]
  return high === undefined || low === undefined ? null : high * 256 + low
}

function pngSize(bytes: Uint8Array): Size | null {
  if (ascii(bytes, 12) !== 'IHDR') return null
  const [w0, w1, h0, h1] = [word(bytes, 16), word(bytes, 18), word(bytes, 20), word(bytes, 22)]
  return w0 === null || w1 === null || h0 === null || h1 === null ? null : [w0 * 65_536 + w1, h0 * 65_536 + h1]
}

/** Walks the segments to the frame header; each step moves on, so it ends with the bytes. */
function jpegSize(bytes: Uint8Array): Size | null {
  let at = 2
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null
    const marker = bytes[at + 1] as number
    if (marker === 0xff) at += 1
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) at += 2
    else if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return frame(bytes, at)
    else {
      const length = word(bytes, at + 2)
      // Pixels before any frame header, the end of the picture, or a segment of no length: no picture that can be shown.
      if (marker === 0xda || marker === 0xd9 || length === null || length < 2) return null
      at += 2 + length
    }
  }
  return null
}

function frame(bytes: Uint8Array, at: number): Size | null {
  const [height, width] = [word(bytes, at + 5), word(bytes, at + 7)]
  return height === null || width === null ? null : [width, height]
}
