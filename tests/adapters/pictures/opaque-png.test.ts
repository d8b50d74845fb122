import { createCanvas, loadImage } from '@napi-rs/canvas'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { opaquePng } from '../../../src/adapters/pictures/opaque-png.js'
import { toPng } from '../../../src/adapters/pictures/png.js'

/** What a general library sees in a file. */
async function pixelsOf(png: Buffer) {
  const image = await loadImage(png)
  const context = createCanvas(image.width, image.height).getContext('2d')
  context.drawImage(image, 0, 0)
  return { width: image.width, height: image.height, rgba: [...context.getImageData(0, 0, image.width, image.height).data] }
}

describe('pixels → PNG without alpha', () => {
  test('a general library reads the very pixels', async () => {
    const sized = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }))
    const picture = sized.chain(([width, height]) =>
      fc.tuple(fc.constant(width), fc.constant(height), fc.uint8Array({ minLength: 3 * width * height, maxLength: 3 * width * height }))
    )
    await fc.assert(
      fc.asyncProperty(picture, async ([width, height, rgb]) => {
        const rgba = Uint8Array.from({ length: 4 * width * height }, (_, at) => (at % 4 === 3 ? 255 : (rgb[(at >> 2) * 3 + (at % 4)] as number)))
        expect(await pixelsOf(opaquePng(rgba, width, height))).toEqual({ width, height, rgba: [...rgba] })
      }),
      { numRuns: 40 }
    )
  })

  test('the sums of its parts are those of the standard', () => {
    // W3C, Portable Network Graphics (third edition), 5.2 and 11.2.5: IEND is always these twelve bytes.
    const png = opaquePng(new Uint8Array(4), 1, 1)
    expect(png.subarray(-12).toString('hex')).toBe('0000000049454e44ae426082')
    // 11.2.1: one pixel by one, 8 bits, colour type 2.
    expect(png.subarray(16, 29).toString('hex')).toBe('00000001000000010802000000')
  })

  test('a picture stands on white where it draws nothing', async () => {
    const { rgba } = await pixelsOf(
      toPng('<svg xmlns="http://www.w3.org/2000/svg" width="2" height="1"><rect width="1" height="1" fill="#0b4f9e"/></svg>')
    )
    expect(rgba).toEqual([0x0b, 0x4f, 0x9e, 255, 255, 255, 255, 255])
  })

  test('pixels of another size are refused', () => {
    for (const [length, width, height] of [
      [4, 0, 1],
      [4, 1, Number.NaN],
      [8, 1, 1],
      [3, 1, 1]
    ] as const)
      expect(() => opaquePng(new Uint8Array(length), width, height)).toThrow('size')
  })
})
