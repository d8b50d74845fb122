import { plural } from '../plural.js'
import type { TalkWords } from '../talk-words.js'

export const talk: TalkWords = {
  buttons: {
    undo: 'Undo', checklist: 'State the checklist', readings: 'Enter readings', coupon: 'New coupon', void: 'Log a void', fixed: 'Repaired', passed: 'Probed: passed',
    failed: 'Probed: failed', spray: 'Can we spray now?', list: 'List voids'
  },
  forms: { checklist: 'Checklist before spraying', readings: 'Readings', coupon: 'Weld coupon', void: 'Failed probe spot' },
  send: 'Log it', cancel: 'Cancel',
  fields: {
    surfaces: 'Surfaces and sheets', dry: 'Deck dry', fleeceDry: 'Fleece dry', clean: 'Deck clean', relaxed: 'Sheets unrolled and relaxed', noRain: 'No rain now', noThunder: 'No thunder heard',
    kit: 'Kit', mixed: 'Both parts mixed', expiry: 'Kit expires on', startUp: 'Start-up, in this order', tight: 'Hoses tight, no leak', purged: 'Both parts purged, equal streams',
    nozzle: 'Nozzle on', tested: 'Test spray good', intakes: 'Air intakes, cars, people downwind', intakesNone: 'None', intakesShut: 'Shut or screened', intakesOpen: 'Open',
    contact: 'What the sheet touches', compatible: 'Compatible or separated', touches: 'Bitumen, tar or bare foam: contact', askMaker: 'Not sure: ask the maker', weather: 'Weather',
    air: 'Air', deck: 'Deck surface', humidity: 'Humidity, %', wind: 'Wind, mean', gust: 'Gust', rainChance: 'Chance of rain, %', iso: 'Iso', resin: 'Resin',
    welder: 'Welder', robot: 'Robot', hand: 'Hand', widths: 'Widths', peel: 'Pulled apart', film: 'Film peels off the scrim', parted: 'Faces part smooth', scorched: 'Scorched',
    glossy: 'Glossy', uneven: 'Uneven', wrinkled: 'Wrinkled', warm: 'Cooled', warmYes: 'Still warm', course: 'Course', on: 'Where', lap: 'Side lap', end: 'End joint', strip: 'Cover strip',
    patch: 'Patch', distance: 'Distance along the course', length: 'Length of the void', cause: 'Cause seen', wet: 'Wet', dirty: 'Dirty', cold: 'Cold weld'
  },
  working: 'Working on it: not logged yet. The answer follows here.',
  failed: (ref) => `Something broke on our side. Nothing was logged. Say it again; if it stays, tell your supervisor this reference: ${ref}`,
  gone: 'This button has nothing to do here any more. Ask again.',
  home: (sites) => plural('en', sites, { one: `${sites} site`, other: `${sites} sites` }),
  noSites: 'No site here yet.',
  howToBegin: 'A supervisor makes one: site new NAME at LAT,LON zone Area/City',
  openVoids: (count) => plural('en', count, { one: `${count} void not settled`, other: `${count} voids not settled` }),
  inventedSite: 'invented site and weather', askNow: 'now'
}
