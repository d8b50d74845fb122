import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const parts: Pick<Text, 'coupon' | 'strip' | 'probe' | 'kit' | 'foam' | 'laid' | 'site' | 'person' | 'help'> = {
  coupon: {
    passed: (welder) => `coupon passed, ${welder}`,
    failed: (welder) => `coupon failed, ${welder}`,
    notJudged: (welder) => `coupon not judged, ${welder}`,
    lapsed: (welder) => `clearance lapsed, ${welder}`,
    welder: 'welder',
    width: (narrowest, least) => `narrowest ${narrowest}${least === null ? '' : `, at least ${least}`}`,
    causes: {
      cold: 'cold or not clean: clean again, check the voltage at the tool',
      hot: 'too hot: scorched or glossy',
      uneven: 'uneven: check pressure, wrinkles, damp, nozzle',
      narrow: 'too narrow: check overlap, track, nozzle, roller'
    },
    moves: {
      temperature: { up: 'hotter', down: 'cooler' },
      speed: { up: 'faster', down: 'slower' },
      pressure: { up: 'more pressure', down: 'less pressure' }
    },
    next: (moves) => `next: ${moves}`,
    oneAtATime: 'one at a time',
    cleared: 'cleared to weld',
    notCleared: 'not cleared',
    notClearedBy: (cause) => `not cleared (${cause})`,
    lapsedBy: {
      failed: 'coupon failed',
      restart: 'restarted',
      power: 'power lost or changed',
      source: 'other source',
      lead: 'other lead',
      set: 'set-point changed',
      speed: 'speed changed',
      nozzle: 'nozzle changed',
      roller: 'roller changed',
      operator: 'other operator',
      off: 'switched off',
      thickness: 'other thickness',
      lot: 'other lot',
      colour: 'other colour',
      'old-sheet': 'old sheet',
      'half-day': 'new half-day',
      air: 'air temperature changed',
      sheet: 'sheet temperature changed',
      wind: 'wind changed',
      cloud: 'sun or cloud changed',
      rain: 'rain since'
    },
    onHold: (metres) => `${metres} on hold: probe all, cut back until two are good, patch the cuts`,
    trend: (mean, sigma) => `widths: mean ${mean}, standard deviation ${sigma}`,
    short: (chance) => `chance that the next is short ${chance}`
  },
  strip: {
    pieces: (count) => counted('en', count, { one: 'cover strip', other: 'cover strips' }),
    length: (amount) => `length ${amount}`,
    land: (amount, least) => `land each side ${amount}${least === null ? '' : `, at least ${least}`}`,
    corners: (radius) => `round the corners, radius ${radius}`,
    perimeter: (all, robot, hand) => `weld ${all}: robot ${robot}, hand ${hand}`,
    each: (all, robot, hand) => `weld each ${all}: robot ${robot}, hand ${hand}`,
    together: (all, robot, hand) => `weld together ${all}: robot ${robot}, hand ${hand}`,
    fromRoll: (roll, count) => `from a roll of ${roll}: ${counted('en', count, { one: 'strip', other: 'strips' })}`,
    rolls: (count) => `takes ${counted('en', count, { one: 'roll', other: 'rolls' })}`
  },
  probe: {
    closeArea: 'close the area',
    noVoids: 'no voids',
    states: { open: 'open', repaired: 'repaired, probe again', passed: 'passed' },
    counts: (open, repaired, passed) => `${open} open · ${repaired} to probe again · ${passed} passed`,
    number: (n) => `void ${n}`,
    course: (n) => `course ${n}`,
    on: { lap: 'side lap', end: 'end joint', strip: 'cover strip', patch: 'patch' },
    causes: {
      film: 'film',
      parted: 'faces parted',
      scorched: 'scorched',
      glossy: 'glossy',
      uneven: 'uneven',
      wrinkled: 'wrinkled',
      wet: 'wet',
      dirty: 'dirty',
      cold: 'cold weld',
      foam: 'foam in the lap'
    },
    at: (distance) => `at ${distance}`,
    long: (length) => `${length} long`,
    rate: (per100m, upper) => `${per100m} voids per 100 m welded${upper === null ? '' : `, with 90 % confidence at most ${upper}`}`
  },
  kit: {
    name: (kit) => `kit ${kit}`,
    iso: 'iso',
    resin: 'resin',
    parts: (shell, mean, core) => `estimate: shell ${shell} · mean ${mean} · core ${core}`,
    ready: (at) => `ready about ${at}`,
    cold: (at) => `too cold on the deck about ${at}`,
    startBy: (at) => `into the warm box by ${at}`,
    mixed: (at) => `mixed ${at}`,
    expires: (date) => `expires ${date}`,
    lot: (lot) => `lot ${lot}`,
    places: { box: 'warm box', store: 'store', deck: 'deck' },
    empty: 'empty',
    none: 'no kits yet: kit K1 iso 24 resin 23 mixed'
  },
  foam: {
    verdicts: {
      good: 'good foam',
      'iso-rich': 'iso-rich: dark or brittle',
      'resin-rich': 'resin-rich: soft or tacky',
      cold: 'cold: slow, flat',
      fast: 'no good test: gelled far too fast. Check seconds, kit temperature and ratio, spray again',
      stop: 'stop: streaks or off ratio'
    },
    openTime: (amount) => `open time ${amount}`,
    scale: (times) => `${times} times the open time of the limits sheet`
  },
  laid: {
    area: (amount) => `laid ${amount}`,
    welded: (robot, hand) => `welded: robot ${robot}, hand ${hand}`,
    yield: (real, plan) => `${real} per kit${plan === null ? '' : `, plan ${plan}`}`,
    noPlan: 'no yield per kit yet',
    drift: (amount, thin) =>
      thin
        ? `${amount} more per kit than planned: too thin. Check spray pattern, ratio, spacing of runs, kit temperature`
        : `${amount} less per kit than planned: too thick, or foam lost. Check spray pattern, ratio, overlap of runs, kit temperature`
  },
  site: {
    title: (name) => `site ${name}`,
    sites: 'sites',
    none: 'no sites yet: start NAME at LAT,LON zone ZONE',
    keys: {
      place: 'place',
      zone: 'time zone',
      units: 'units',
      lang: 'language',
      posts: 'posts',
      morning: 'morning post',
      evening: 'evening post',
      days: 'working days',
      hours: 'working hours',
      limits: 'limits sheet',
      substrate: 'substrate',
      channel: 'channel',
      roof: 'roof'
    },
    units: { metric: 'metric', us: 'US' },
    langs: { en: 'English', es: 'Spanish', fr: 'French' },
    posts: { evening: 'evening', morning: 'morning', watch: 'watch', 'wrap-up': 'wrap-up' },
    noPosts: 'none',
    substrates: {
      board: 'insulation board',
      foil: 'foil-faced board',
      concrete: 'concrete',
      steel: 'steel deck',
      membrane: 'old sheet',
      plywood: 'plywood'
    },
    roof: (width, depth, height) => `${width} × ${depth}, ${height} high`,
    noChannel: 'none',
    closed: 'site closed'
  },
  person: {
    me: 'your settings',
    asSite: 'as the site',
    summary: 'summary each morning, in one message for all sites',
    undone: (ids) => `undone: ${ids}`,
    nothingUndone: 'nothing to undo',
    corrected: (id) => `corrected: ${id}`,
    was: (values) => `was ${values}`,
    now: (values) => `is ${values}`
  },
  help: {
    commands: 'commands',
    more: 'Write help and a command for its words: help spray',
    anyOrder: 'Words in any order, metric or US units, words of all three languages.',
    usage: (usage) => `write: ${usage}`,
    example: (example) => `example: ${example}`
  }
}
