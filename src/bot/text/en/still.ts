import type { StillWords } from '../still-words.js'

export const still: StillWords = {
  punch: (numbers) => `punch list: ${numbers}`,
  sealOpen: (edge) => `night seal: ${edge} of edge open`,
  sealUnstated: 'night seal: not stated',
  drainsShut: 'drains: not open',
  drainsUnstated: 'drains: not stated',
  sheetsLoose: 'loose sheets: not rolled or weighed down',
  sheetsUnstated: 'loose sheets: not stated',
  bond: {
    unstated: (substrate) => `test square on ${substrate}: none today`,
    failed: (substrate) => `test square on ${substrate}: failed`,
    unjudged: (substrate) => `test square on ${substrate}: not peeled yet`
  },
  details: { bad: (kinds) => `details to mend: ${kinds}`, unchecked: (kinds) => `details not checked: ${kinds}` },
  fireUntil: (at) => `fire watch until ${at}`,
  fireUnsigned: 'fire watch: nobody said that it was kept to the end'
}
