import { isCommandName, type Usages } from './usages.js'

/** How a command is written, in the words of some language; what can be asked at all where there is no command. */
export function usageOf(command: string | null, usages: Usages): string {
  return isCommandName(command) ? usages[command].usage : Object.keys(usages).join(' · ')
}
