import { usages } from './usages.js'

/** How a command is written; what can be asked at all when there is no command. */
export function usageOf(command: string | null): string {
  if (command !== null && command in usages) return usages[command as keyof typeof usages].usage
  return Object.keys(usages).join(' · ')
}
