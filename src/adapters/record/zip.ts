import { zipSync } from 'fflate'

/** Files in one, under their names; `madeAt` is the only time in it, so that the same files give the same bytes. */
export function toZip(files: readonly { readonly name: string; readonly bytes: Uint8Array }[], madeAt: Date): Uint8Array {
  const entries = Object.fromEntries(files.map(({ name, bytes }) => [name, [bytes, { mtime: madeAt, level: 6 }] as [Uint8Array, object]]))
  return zipSync(entries as Parameters<typeof zipSync>[0])
}
