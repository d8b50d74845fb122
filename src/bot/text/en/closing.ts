import type { ClosingWords } from '../closing-words.js'
import { counted } from '../plural.js'

export const closing: ClosingWords = {
  mend: {
    weld: 'mend: lift, clean, dry, re-heat, press, let it cool',
    patch: (why, length) => `patch it, do not weld it again (${why}): ${length} along the seam, past the void all round`,
    cutAndPatch: (length) => `cut the foam out and patch: ${length} along the seam`,
    why: { char: 'charred', failed: 'failed again after a repair', long: 'too long', foam: 'foam cured in the lap' },
    probeAgain: (length) => `then probe ${length}, past it on either side`,
    wantsPatch: (number) => `this one wants a patch: say probe ${number} failed, patch it, then probe ${number} fixed patch`,
    waitFirst: (at) => `WAIT until ${at}: probed warm, close nothing yet`,
    probedWarm: (at) => `not cold yet: a warm weld hides a void. Probe it again at ${at}; if it opens then, log a new void`,
    waitUntil: (at) => `not cold yet: a warm weld hides a void. Wait until ${at} and probe again, or say cooled`,
    under: (list) => `still open in the lap below: void ${list}; laps are mended before strips and patches cover them`,
    dated: (at) => `dated ${at}`,
    photos: (count) => counted('en', count, { one: 'photo', other: 'photos' })
  },
  bond: {
    square: (substrate) => `test square, ${substrate}`,
    none: 'no test square today',
    breaks: { foam: 'foam on both faces', fleece: 'fleece torn', facer: 'facer torn', face: 'a clean face' },
    force: (amount) => `force ${amount}`,
    stress: (amount) => `${amount} kPa`,
    wanted: (amount) => `wanted ${amount}`
  },
  seal: {
    title: 'night seal',
    edge: (amount) => `open edge ${amount}`,
    noEdge: 'no open edge',
    methods: { tape: 'taped', foam: 'foamed', mastic: 'mastic', welded: 'welded', weighed: 'weighed down' },
    by: (who) => `by ${who}`,
    cut: 'seal of the night cut off',
    wet: (amount) => `wet fleece cut back ${amount}`,
    toCut: (amount) => `yesterday’s seal is to be cut off: ${amount}; cut wet fleece back, then say seal cut`,
    photos: (count) => counted('en', count, { one: 'photo', other: 'photos' })
  },
  open: {
    voids: (list) => `voids to repair: ${list}`,
    reprobe: (list) => `voids to probe again: ${list}`,
    nothing: 'nothing stands open'
  },
  fire: {
    title: 'end the fire watch',
    running: (until, left) => `until ${until}, ${left} left`,
    heat: (at) => `last heat ${at}; later heat: say fire heat`,
    noHeat: 'no heat logged today or yesterday',
    unsigned: (at) => `its time was over at ${at}: look once more, then say fire done`,
    done: (who) => `kept to the end${who === null ? '' : ` by ${who}`}`,
    length: (amount) => `length ${amount}`,
    permit: 'The hot-work permit decides how long; say it: fire 2 h'
  },
  detail: {
    title: 'details',
    kinds: {
      corners: 'corners',
      pipes: 'pipes',
      drains: 'drains',
      terminations: 'terminations',
      cutEdges: 'cut edges',
      tSteps: 'T-steps'
    },
    statuses: { good: 'good', bad: 'to mend', none: 'none here', unknown: 'not checked' }
  },
  punch: {
    title: 'punch list',
    item: (number, text) => `${number}: ${text}`,
    states: { open: 'open', done: 'done' },
    counts: (open, done) => `${open} open · ${done} done`,
    empty: 'nothing on it'
  },
  photo: {
    kept: (of) => `Photo kept: ${of}`,
    day: 'closing up',
    punch: (number) => `punch list ${number}`,
    problems: {
      empty: 'the file is empty',
      'too-large': 'it is larger than 8 MB; send a smaller one',
      heic: 'it is a HEIC photo; set the camera to JPEG (most compatible) or send it as JPEG',
      'not-a-photo': 'it is no photo; send a JPEG or PNG',
      damaged: 'the picture is damaged; take it again',
      away: 'the chat service did not hand it over; it can be fetched again',
      'not-found': 'it is not there any more, or not for me to see',
      gone: 'what it shows was undone'
    },
    notKept: (why) => `The photo was not kept: ${why}. What was said stands.`,
    alone: 'A photo alone says nothing yet: what does it show?',
    along: (count) => counted('en', count, { one: 'photo comes along', other: 'photos come along' })
  },
  since: (state, at) => `${state} since ${at}`,
  findings: {
    'bond-square': {
      name: 'test square',
      is: { go: 'test square good', caution: 'test square doubtful', unknown: 'test square: not judged', 'no-go': 'test square failed' }
    },
    'night-seal': {
      name: 'night seal',
      is: { go: 'open edge sealed', caution: 'night seal doubtful', unknown: 'open edge: not stated', 'no-go': 'open edge not sealed' }
    },
    'drains-open': {
      name: 'drains',
      is: { go: 'drains open', caution: 'drains doubtful', unknown: 'drains: not stated', 'no-go': 'drains blocked' }
    },
    'sheets-safe': {
      name: 'loose sheets',
      is: { go: 'no loose sheets', caution: 'sheets hardly held', unknown: 'loose sheets: not stated', 'no-go': 'sheets lie loose' }
    },
    'fire-watch': {
      name: 'fire watch',
      is: { go: 'no fire watch running', caution: 'fire watch', unknown: 'fire watch over, not signed off', 'no-go': 'fire watch running' }
    },
    details: {
      name: 'details',
      is: { go: 'all details checked', caution: 'details', unknown: 'details: not all checked', 'no-go': 'details to mend' }
    },
    'punch-list': {
      name: 'punch list',
      is: { go: 'punch list done', caution: 'punch list not done', unknown: 'punch list: not known', 'no-go': 'punch list not done' }
    }
  },
  fixes: {
    'test:bond': 'stop, find out why, cut back and glue again, then a new test square',
    'wait:cured': 'let it cure, then peel it',
    'state:bond': 'peel a test square and state where it broke',
    'seal:edge': 'seal the open edge and state how',
    'state:seal': 'state the open edge and how it is sealed',
    'open:drains': 'open the drains',
    'state:drains': 'look and state: drains open',
    'roll:sheets': 'roll up or weigh down the loose sheets',
    'state:rolled': 'look and state: rolled',
    'watch:fire': 'stay and watch',
    'state:heat': 'state the last heat',
    'state:fire': 'look once more and state: fire done',
    'mend:detail': 'mend the details that are not good',
    'state:detail': 'look at the details and state them',
    'mend:punch': 'mend what is on the punch list'
  },
  toSay: {
    'state:bond': 'foam',
    'state:seal': 'LENGTH tape',
    'state:drains': 'drains open',
    'state:rolled': 'rolled',
    'state:heat': 'heat @TIME',
    'state:fire': 'done',
    'state:detail': 'corners pipes drains'
  },
  states: { 'no-heat': 'no heat was logged', running: 'its time is not over', done: 'done', 'open-punch': 'the punch list is not done' },
  buttons: {
    seal: 'Night seal',
    fireDone: 'Watched to the end',
    punch: 'Add to punch list',
    detail: 'Check details',
    photo: 'Fetch the photo again',
    patched: 'Patched'
  },
  labels: {
    photo: 'photo',
    repair: 'repair',
    lifted: 'lifted',
    cleaned: 'cleaned',
    dried: 'dried',
    reheated: 're-heated',
    cooled: 'cooled',
    broke: 'where it broke',
    force: 'force',
    wanted: 'wanted',
    square: 'square',
    cured: 'cured',
    facer: 'facer',
    face: 'clean face',
    method: 'method',
    tape: 'tape',
    mastic: 'mastic',
    welded: 'welded',
    weighed: 'weighed down',
    drains: 'drains',
    loose: 'loose sheets',
    cutOff: 'cut off',
    heat: 'heat',
    done: 'done',
    watch: 'watch',
    corners: 'corners',
    pipes: 'pipes',
    terminations: 'terminations',
    cutEdges: 'cut edges',
    tSteps: 'T-steps',
    detail: 'detail',
    punch: 'punch list item',
    fire: 'fire watch',
    text: 'text',
    all: 'all',
    board: 'insulation board',
    foil: 'foil-faced board',
    concrete: 'concrete',
    steel: 'steel deck',
    membrane: 'old sheet',
    plywood: 'plywood'
  }
}
