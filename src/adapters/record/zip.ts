import { zipSync } from 'fflate'

interface Named {
  readonly name: string
  readonly bytes: Uint8Array
}

/** Files in one, under their names; `madeAt` is the only time in it, so that the same files give the same bytes. */
export function toZip(files: readonly Named[], madeAt: Date): Uint8Array {
  const entries = Object.fromEntries(apart(files).map(({ name, bytes }) => [name, [bytes, { mtime: madeAt, level: 6 }] as [Uint8Array, object]]))
  return zipSync(entries as Parameters<typeof zipSync>[0])
}

/** Of two files of one name none is lost: the later one is numbered. Capitals do not count: not every system tells them apart. */
function apart(files: readonly Named[]): readonly Named[] {
  const taken = new Set<string>()
  return files.map(({ name, bytes }) => {
    const dot = name.lastIndexOf('.')
    const [stem, ending] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, '']
    let free = name
    for (let number = 2; taken.has(free.toLowerCase()); number += 1) free = `${stem}-${number}${ending}`
    taken.add(free.toLowerCase())
    return { name: free, bytes }
  })
}
