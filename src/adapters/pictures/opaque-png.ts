import { crc32, deflateSync } from 'node:zlib'

const signature = [137, 80, 78, 71, 13, 10, 26, 10]
/** Twice as fast as the usual 6, and a tenth longer. */
const level = 4

/**
 * A PNG of three bytes a pixel from RGBA, whose alpha is not looked at: a picture on white has none, a file without it is a third
 * smaller, and a document takes it in as it is. W3C, Portable Network Graphics (third edition), 5.3, 9 and 11.2. `width` and `height`
 * in pixels, from 1.
 */
export function opaquePng(rgba: Uint8Array, width: number, height: number): Buffer {
  if (!(width >= 1 && height >= 1 && rgba.length === 4 * width * height)) throw new Error('pixels of another size')
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width, 0)
  head.writeUInt32BE(height, 4)
  // Eight bits a channel, colour type 2 (red, green, blue), the one compression, the one set of filters, not interlaced.
  head.set([8, 2, 0, 0, 0], 8)
  const body = deflateSync(linesOf(rgba, width, height), { level })
  return Buffer.concat([Buffer.from(signature), chunk('IHDR', head), chunk('IDAT', body), chunk('IEND', Buffer.alloc(0))])
}

/** Every line after its filter, 0: none, which suits flat colours best. */
function linesOf(rgba: Uint8Array, width: number, height: number): Uint8Array {
  const lines = new Uint8Array(height * (3 * width + 1))
  let to = 0
  let from = 0
  for (let y = 0; y < height; y += 1) {
    to += 1
    for (let x = 0; x < width; x += 1) {
      lines[to] = rgba[from] as number
      lines[to + 1] = rgba[from + 1] as number
      lines[to + 2] = rgba[from + 2] as number
      to += 3
      from += 4
    }
  }
  return lines
}

/** Length, type, data and the CRC-32 of type and data. */
function chunk(type: string, data: Uint8Array): Buffer {
  const whole = Buffer.alloc(12 + data.length)
  whole.writeUInt32BE(data.length, 0)
  whole.write(type, 4, 'latin1')
  whole.set(data, 8)
  whole.writeUInt32BE(crc32(whole.subarray(4, 8 + data.length)), 8 + data.length)
  return whole
}
