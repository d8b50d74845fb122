import { mkdirSync, statSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { StoreError } from '../../bot/ports.js'

/** Makes a folder and its parents. Throws StoreError when that cannot be done. */
export function makeFolder(folder: string): void {
  try {
    makeAll(resolve(folder))
  } catch (error) {
    throw new StoreError(`the data folder ${folder} cannot be made: ${(error as Error).message}`, { cause: error })
  }
}

/** Step by step: Node's own `recursive` never ends on a file system that answers ENOENT for a folder in one that is there (/proc). */
function makeAll(folder: string): void {
  if (isFolder(folder)) return
  makeAll(dirname(folder))
  try {
    mkdirSync(folder)
  } catch (error) {
    // Another process that starts at the same time may have made it; a file of that name is no folder.
    if (!isFolder(folder)) throw error
  }
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true
}
