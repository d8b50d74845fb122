import { commandLexicon } from '../../bot/words/command-words.js'
import { fold } from '../../bot/words/fold.js'

/** Slash commands of the manifest; `hint-NAME` of the room's words says what each is for, with an example after the colon. */
export const roomCommands = ['spray', 'weld', 'strip', 'probe', 'kit', 'foam', 'air', 'sheets', 'laid', 'day', 'site', 'seamhand'] as const

export function isRoomCommand(word: string): boolean {
  return roomCommands.some((name) => word === `/${name}`)
}

/** A word that other commands begin with, in any language: `/seal` is taken as `/seamhand seal`. */
export function isBehindSeamhand(word: string): boolean {
  return commandLexicon.index.has(fold(word.slice(1)))
}
