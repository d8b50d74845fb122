import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const day: Text['day'] = {
  opens: (rule) => `before: ${rule}`,
  noLight: { before: 'dark', after: 'too little daylight to close up' },
  lastSheet: (by, close) => `Last sheet in by ${by}, all welded and tied in by ${close}`,
  noMore: (by, close) => `No further sheet: the last one was to be in by ${by}, all welded and tied in by ${close}`,
  closing: { window: 'end of the hours that can go', sunset: 'sunset less closing up', rain: 'rain' },
  path: { sheet: 'binds: rolling in, waiting and welding that sheet', backlog: 'binds: welds still open' },
  backlog: (robot, hand) => `still to weld: robot ${robot}, hand ${hand}`,
  fits: (area, work) => `Fits: about ${area}, slowest: ${work}`,
  ifKnown: (hours, area, first) =>
    `${hours} unknown and not counted: take readings. If they say go:${first === null ? '' : ` first spray about ${first},`}${area === null ? ' more would fit' : ` about ${area} would fit`}`,
  allUnknown: (hours) => `All of it in hours that are unknown (${hours}): take readings before counting on it`,
  works: { spray: 'spraying', roll: 'rolling in', robot: 'robot welds', hand: 'hand welds' },
  stage: (list) => `Stage: ${list}`,
  staged: {
    kits: (count) => counted('en', count, { one: 'kit', other: 'kits' }),
    nozzles: (count) => counted('en', count, { one: 'nozzle', other: 'nozzles' }),
    strips: (count) => counted('en', count, { one: 'cover strip', other: 'cover strips' })
  },
  warming: (count) => `${count} warming at once`,
  dry: (at) => `deck dry about ${at}`,
  firstSpray: (at) => `first spray about ${at}`,
  dew: (at) => `dew from ${at}`,
  start: 'day start',
  reminders: [
    'Edges, openings and rooflights guarded, ways up and tie-off points checked.',
    'Hot-work permit signed, extinguisher and fire watch named.',
    'Air intakes downwind found, shut or screened; people and cars below moved.',
    'Isocyanates: gloves, eyes, skin and breathing protection as the data sheet says.',
    'Local rules and the site’s own plan come first.'
  ],
  record: (date) => `day record, ${date}`,
  entries: (count) => counted('en', count, { one: 'entry', other: 'entries' }),
  crew: (gangs) => `By the rates of the crew in the limits sheet, ${counted('en', gangs, { one: 'gang', other: 'gangs' })}: set your own there.`
}
