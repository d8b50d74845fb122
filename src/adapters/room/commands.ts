/** Slash commands of the manifest; `hint-NAME` of the room's words says what each is for, with an example after the colon. */
export const roomCommands = ['spray', 'weld', 'strip', 'probe', 'kit', 'foam', 'air', 'sheets', 'laid', 'day', 'site', 'seamhand'] as const

export function isRoomCommand(word: string): boolean {
  return roomCommands.some((name) => word === `/${name}`)
}
