import type { RefusalWords, Wrong } from '../text.js'

function of({ word, label }: Wrong): string {
  if (word === null) return label ?? 'a word'
  return label === null ? word : `${word} (${label})`
}

export const refusal: RefusalWords = {
  codes: {
    empty: () => 'There was nothing to read.',
    'too-long': () => 'Too long: at most 2000 characters.',
    'unknown-command': (wrong) => `Unknown command: ${of(wrong)}.`,
    'unknown-word': (wrong) => `Not understood: ${of(wrong)}.`,
    missing: (wrong) => `Missing: ${wrong.label ?? of(wrong)}.`,
    'bad-number': (wrong) => `Not readable as a number: ${of(wrong)}.`,
    'ambiguous-number': (wrong) => `Ambiguous number: ${of(wrong)}.${wrong.whole === null ? '' : ` Write ${wrong.whole} or ${wrong.decimal}.`}`,
    'wrong-unit': (wrong) => `Wrong unit: ${of(wrong)}.`,
    'out-of-range': (wrong) => `Out of range: ${of(wrong)}${range(wrong)}${stated(wrong)}.`,
    inconsistent: (wrong) => `These do not go together: ${of(wrong)}${wrong.other === null ? '' : ` and ${wrong.other}`}${stated(wrong)}.`,
    duplicate: (wrong) => `Given twice with two values: ${of(wrong)}.`,
    'not-found': (wrong) => `Not found: ${of(wrong)}.`,
    'wrong-state': (wrong) => `Not possible now: ${of(wrong)}${wrong.state === null ? '' : `, ${wrong.state}`}.`,
    'not-allowed': (wrong) => (wrong.who === null ? `Not allowed: ${of(wrong)}.` : `Not allowed: only for ${wrong.who}.`),
    'no-site': (wrong) => (wrong.word === null ? 'Which site is not clear.' : `No such site: ${wrong.word}.`),
    'bad-option': (wrong) => `Wrong option: ${of(wrong)}.`,
    config: (wrong) => `Wrong settings: ${of(wrong)}.`,
    store: (wrong) => `The log cannot be reached${wrong.word === null ? '' : `: ${wrong.word}`}.`,
    'weather-file': (wrong) => `Weather file not readable: ${of(wrong)}.`,
    internal: (wrong) => `Something failed inside${wrong.ref === null ? '' : `, reference ${wrong.ref}`}.`
  },
  next: {
    empty: 'Write help for the list of commands.',
    'too-long': 'Write less, in several messages.',
    'unknown-command': 'Write help for the list of commands.',
    'unknown-word': null,
    missing: null,
    'bad-number': 'Write digits, one comma or point: 12.5',
    'ambiguous-number': null,
    'wrong-unit': null,
    'out-of-range': 'Check the value and its unit.',
    inconsistent: null,
    duplicate: 'Give it once.',
    'not-found': null,
    'wrong-state': null,
    'not-allowed': 'Ask a supervisor.',
    'no-site': 'Ask in the channel of the site, or make one: start NAME at LAT,LON zone ZONE',
    'bad-option': null,
    config: 'Correct the settings and start again.',
    store: 'Try again. If it stays, tell who runs the bot.',
    'weather-file': 'Give a forecast file of a known source.',
    internal: 'Tell who runs the bot, with the reference.'
  },
  nameSite: 'Name it: --site NAME. Or make one: start NAME at LAT,LON zone ZONE',
  nothingLogged: 'Nothing was logged.',
  understood: (list) => `Understood: ${list}`,
  nearest: (list) => `Did you mean ${list}?`,
  sites: (list) => `Sites: ${list}`,
  who: { supervisor: 'supervisors', supervisors: 'supervisors', author: 'the one who logged it', crew: 'the crew' },
  states: {
    crossing: 'the sides cross, touch or run back',
    'meets-edge': 'the opening touches the edge of the roof',
    'meets-opening': 'the openings touch or overlap',
    outside: 'it is outside the roof',
    'within-opening': 'it lies in another opening',
    'corners-few': 'three corners at least',
    'side-short': 'a side is shorter than 10 mm',
    flat: 'it has no area',
    'too-large': 'too large to lay out',
    'sheet-wide': 'the sheet is wider than the roof',
    'lap-wide': 'the lap has to be less than half the sheet',
    'roll-short': 'the roll has to be 1 m long at least',
    'gap-wide': 'the gap is as wide as the strip',
    'patch-layers': 'patches begin at three layers',
    'nothing-on-hold': 'nothing is on hold',
    'not-probed': 'probe everything on hold first: weld NAME probed',
    'no-good-cuts': 'cut back until two pieces are good first: weld NAME cut WIDTH PEEL',
    'open-voids': 'open voids are left: repair and probe them first',
    taken: 'it belongs to another site',
    closed: 'it is closed',
    exists: 'there is one already',
    undone: 'undone already',
    'is-go': 'nothing to override: the answer is go',
    'too-late': 'logged more than 10 min ago',
    'built-on': 'a later entry stands on it',
    decision: 'decisions stay',
    override: 'overrides stay',
    undo: 'an undo stays',
    correction: 'a correction stays',
    setting: 'set it again instead'
  }
}

function range({ from, to }: Wrong): string {
  if (from !== null && to !== null) return `: from ${from} to ${to}`
  if (from !== null) return `: at least ${from}`
  return to === null ? '' : `: at most ${to}`
}

function stated({ state }: Wrong): string {
  return state === null ? '' : `: ${state}`
}
