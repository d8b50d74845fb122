import type { Text } from '../text.js'

const local = 'Local rules and licensed practice come first.'

export const frame: Pick<Text, 'outcomes' | 'outcomesWithin' | 'activities' | 'groups' | 'commands' | 'cautions' | 'frame'> = {
  outcomes: { go: 'GO', caution: 'CAUTION', unknown: 'UNKNOWN', 'no-go': 'NO-GO' },
  outcomesWithin: { go: 'go', caution: 'caution', unknown: 'unknown', 'no-go': 'no-go' },
  activities: { spray: 'spray', lay: 'lay sheets', weld: 'weld', people: 'people on the roof' },
  groups: { conditions: 'conditions', checklist: 'checklist', people: 'people' },
  commands: {
    spray: 'can foam be sprayed now? Readings and checks go with it',
    air: 'log air and wind: handling sheets, people on the roof',
    weld: 'can we weld now? Coupons, welder changes, clearance',
    strip: 'cover strip: length, land, weld metres',
    sheets: 'sheets on a roof',
    probe: 'voids: open, repaired, probed again, list',
    kit: 'kits: temperature, ready when, expiry, place',
    foam: 'test spray: good or stop, open time',
    laid: 'log the area laid and the metres welded',
    bond: 'test square of the day: where it broke',
    seal: 'night seal, drains, loose sheets, and what stands open',
    fire: 'fire watch after the last heat',
    detail: 'checklist of the details',
    punch: 'what is left to mend before handing over',
    day: 'the hours that can go, last sheet by, what to stage',
    site: 'show or set a site',
    start: 'set up a site in a minute',
    role: 'who is supervisor, and naming one',
    help: 'this list, or one command',
    me: 'your language and units',
    undo: 'undo what you logged within 10 min',
    correct: 'put other values in place of an entry’s: both stay in the record'
  },
  cautions: {
    isocyanates: `Isocyanates: gloves, eyes, breathing protection, keep others away. ${local}`,
    hotAir: `Hot air and leads: burns, shock, fire watch after the last heat. ${local}`,
    edges: `Edges and wind: fall protection, weigh sheets down. ${local}`,
    blade: `Blades and edges: cut away from yourself, fall protection. ${local}`,
    thunder: `Lightning: off the roof until 30 min after the last thunder. ${local}`,
    heat: `Heat: water, shade, rests, newcomers first. ${local}`,
    cold: `Cold: warm clothes, rests in the warm, watch each other. ${local}`,
    ice: `Ice: slips and falls, keep off until it is gone. ${local}`,
    hurt: `Somebody hurt? Stop, help first, call the emergency number. Foam in eyes or on skin: rinse at once with plenty of water. Burn: cool it under running water. Have the safety data sheet at hand. ${local}`
  },
  frame: {
    quote: (word) => `“${word}”`,
    colon: ': ',
    no: 'no',
    or: 'or',
    more: (count) => `and ${count} more`,
    logged: (ids) => `logged as ${ids}`,
    notDrawn: (names, ref) => `not drawn: ${names}. What was logged stays logged. Ask again; if it stays, tell who runs the bot: ${ref}`,
    undo: (ids) => `undo within 10 min (undo ${ids})`,
    decision: (id) => `decision ${id}`,
    attribution: {
      met: 'Data from MET Norway',
      nws: 'Data from the US National Weather Service',
      'open-meteo': 'Weather data by Open-Meteo.com',
      sample: 'Weather: invented week, demo'
    },
    from: (source) => `Weather from ${source}`,
    issued: (at) => `issued ${at}`,
    stale: 'more than 3 h old',
    sample: 'invented week, demo',
    invented: 'invented site',
    noForecast: 'no forecast for this place',
    forecastLacks: (setting) => `no forecast: set ${setting} (README, Settings)`,
    limits: (id, version) => `limits sheet ${id} v${version}`
  }
}
