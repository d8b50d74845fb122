const headerBytes = 12
const recordBytes = 16

/**
 * The bytes of a font without the named tables: they are left out of its directory, every other table stays where it stood. OpenType
 * 1.9.1, "Organization of an OpenType Font": sfnt version, number of tables, three fields for searching, records of 16 bytes sorted by
 * tag. The sum of the whole file in `head` is no longer that of these bytes; readers do not check it. Throws for what is no font of
 * TrueType outlines.
 */
export function withoutTables(font: Uint8Array, tags: readonly string[]): Uint8Array {
  const from = Buffer.from(font.buffer, font.byteOffset, font.byteLength)
  if (font.length < headerBytes || from.readUInt32BE(0) !== 0x00010000) throw new Error('no TrueType font')
  const count = from.readUInt16BE(4)
  const end = headerBytes + count * recordBytes
  if (!(count >= 1 && end <= font.length)) throw new Error('a font without its directory')
  const records = Array.from({ length: count }, (_, index) => from.subarray(headerBytes + index * recordBytes).subarray(0, recordBytes))
  const kept = records.filter((record) => !tags.includes(record.toString('latin1', 0, 4)))
  const to = Buffer.from(font)
  to.fill(0, 4, end)
  putCount(to, kept.length)
  for (const [index, record] of kept.entries()) record.copy(to, headerBytes + index * recordBytes)
  return to
}

/** The number of tables, and what the format has for a binary search in them. */
function putCount(to: Buffer, count: number): void {
  const power = Math.floor(Math.log2(Math.max(1, count)))
  to.writeUInt16BE(count, 4)
  to.writeUInt16BE(2 ** power * recordBytes, 6)
  to.writeUInt16BE(power, 8)
  to.writeUInt16BE((count - 2 ** power) * recordBytes, 10)
}
