/** Slash commands of the manifest, with what the text box says of them. */
export const roomCommands = [
  { name: '/spray', hint: 'Can we spray now? Add readings: air 20 deck 18 rh 60' },
  { name: '/weld', hint: 'Can we weld? A coupon: robot 41 mm film' },
  { name: '/strip', hint: 'Cut a cover strip: 2 m gap 6' },
  { name: '/probe', hint: 'A void and its repair: course 4 end 3.2 m 40 mm' },
  { name: '/kit', hint: 'A kit and its readings: K7 iso 24 resin 23' },
  { name: '/foam', hint: 'A test spray: 45 s even' },
  { name: '/air', hint: 'Can we lay? Add weather: wind 18 gust 30' },
  { name: '/sheets', hint: 'Lay a roof out: 24x36 m opening 2x1.2 at 5,9' },
  { name: '/laid', hint: 'What was laid: 42 m2 course 4 kit K7' },
  { name: '/day', hint: 'Hours that can go, last sheet, what to stage: tomorrow' },
  { name: '/site', hint: 'Show or set a site' },
  { name: '/seamhand', hint: 'Everything: help, me, undo, correct' }
] as const

export function isRoomCommand(word: string): boolean {
  return roomCommands.some((command) => command.name === word)
}
