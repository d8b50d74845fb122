import { createCanvas } from '@napi-rs/canvas'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lookAtPhoto, photoMaxBytes } from '../../src/core/photo.js'

const canvas = createCanvas(31, 17)
const bytesOf = (text: string) => Uint8Array.from(text, (char) => char.charCodeAt(0))

/** Pictures of another program (@napi-rs/canvas), whose size it was told. */
describe('looking at a photo', () => {
  it.each([
    ['image/jpeg', canvas.toBuffer('image/jpeg')],
    ['image/png', canvas.toBuffer('image/png')]
  ])('knows %s and its size', (mime, bytes) => {
    expect(lookAtPhoto(bytes)).toEqual({ ok: true, mime, widthPx: 31, heightPx: 17 })
  })

  it.each([
    ['nothing', new Uint8Array(), 'empty'],
    ['a web page', bytesOf('<!DOCTYPE html><html></html>'), 'not-a-photo'],
    ['a gif', bytesOf('GIF89a1234567890'), 'not-a-photo'],
    ['a film', bytesOf('\0\0\0\u0018ftypmp42\0\0\0\0mp42isom'), 'not-a-photo'],
    // ISO/IEC 23008-12: brands of a HEIC; the major brand stands after `ftyp`.
    ['a HEIC', bytesOf('\0\0\0\u0018ftypheic\0\0\0\0mif1heic'), 'heic'],
    ['a HEIF', bytesOf('\0\0\0\u0018ftypmif1\0\0\0\0mif1heic'), 'heic'],
    ['too much', new Uint8Array(photoMaxBytes + 1), 'too-large'],
    ['a JPEG cut short', canvas.toBuffer('image/jpeg').subarray(0, 24), 'damaged'],
    ['a PNG cut short', canvas.toBuffer('image/png').subarray(0, 18), 'damaged'],
    ['a PNG of no width', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 73, 72, 68, 82, 0, 0, 0, 0, 0, 0, 0, 5), 'damaged']
  ])('refuses %s by name', (_name, bytes, problem) => {
    expect(lookAtPhoto(bytes)).toEqual({ ok: false, problem })
  })

  it('ends on any bytes behind the head of a JPEG', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (rest) => {
        const looked = lookAtPhoto(Uint8Array.of(0xff, 0xd8, 0xff, ...rest))
        if (looked.ok) expect(looked.widthPx * looked.heightPx).toBeGreaterThan(0)
      })
    )
  })
})
