import { fold } from './fold.js'
import { allForms, type Words } from './forms.js'
import { mendedByWords } from './refused.js'
import type { Reading } from './said.js'

/** What a crew says of the sky, the roof and the power in words of no command. Nothing of it is logged: it names what to send instead. */
export const factIds = ['thunder', 'rain', 'lap', 'lapClean', 'fleece', 'deck', 'deckClean', 'power'] as const
export type FactId = (typeof factIds)[number]

const heardAs = {
  thunder: {
    en: 'thunder thundering thunders lightning lightnings thunderstorm(,s) storm(,s)',
    es: 'trueno(,s) truena tronando rayo(,s) relámpago(,s) relampaguea relampagueando tormenta(,s)',
    fr: 'tonnerre(,s) il_tonne ça_tonne orage(,s) orageux foudre éclair(,s)'
  },
  rain: {
    en: 'rain rains raining rained rainy pouring shower(,s) drizzle drizzling sprinkling',
    es: 'lluvia(,s) llueve llueva llover lloviendo llovió lloverá aguacero(,s) chubasco(,s) llovizna lloviznando chispea chispeando',
    fr: 'pluie(,s) pleut pleuvoir pleuvait pleuvra averse(,s) bruine bruiner crachin'
  },
  wet: {
    en: 'wet soaked soaking damp puddle(,s) ponding dew dry dried',
    es: 'mojad(o,a,os,as) empapad(o,a,os,as) húmed(o,a,os,as) encharcad(o,a) charco(,s) rocío sec(o,a,os,as)',
    fr: 'mouillé(,e,s,es) trempé(,e,s,es) détrempé(,e) humide(,s) flaque(,s) rosée sec secs sèche(,s)'
  },
  dirty: {
    en: 'dirty dusty muddy clean',
    es: 'suci(o,a,os,as) polvo polvorient(o,a) barro lodo limpi(o,a,os,as)',
    fr: 'sale(,s) poussière poussiéreux poussiéreuse boue boueux propre(,s)'
  },
  power: {
    en: 'power_out power_cut power_failed power_failure power_went lost_power no_power blackout power_is_out power_is_off power_is_gone generator_died generator_stopped generator_quit',
    es: 'se_fue_la_luz sin_luz se_fue_la_corriente sin_corriente se_cortó_la_luz se_cortó_la_corriente apagón no_hay_luz no_hay_corriente se_paró_el_generador',
    fr: 'plus_de_courant pas_de_courant panne_de_courant coupure_de_courant panne_électrique plus_d’électricité pas_d’électricité groupe_arrêté'
  },
  seam: {
    en: 'seam(,s) lap(,s) side_lap(,s) joint(,s)',
    es: 'costura(,s) traslape(,s) solape(,s) junta(,s)',
    fr: 'recouvrement(,s) joint(,s) couture(,s)'
  },
  fleece: {
    en: 'fleece sheet(,s) roll(,s) membrane',
    es: 'fieltro vellón lámina(,s) rollo(,s) membrana',
    fr: 'feutre feuille(,s) rouleau(,x) membrane'
  }
} as const satisfies Record<string, Words>

type HeardAs = keyof typeof heardAs

const phrases = Object.entries(heardAs).map(([id, words]) => [id as HeardAs, allForms(words).map(spaced)] as const)

/** Folded words with a space around each, so that a phrase is found as whole words only. */
function spaced(text: string): string {
  return ` ${fold(text)
    .split(/[^a-z]+/)
    .join(' ')
    .trim()} `
}

/** What a message of plain words seems to state, whether as so or as not so. Safe to be wrong: it only suggests words. */
export function factsIn(text: string): readonly FactId[] {
  const words = spaced(text.slice(0, 2000))
  const heard = new Set(phrases.flatMap(([id, forms]) => (forms.some((form) => words.includes(form)) ? [id] : [])))
  const surface = heard.has('seam') ? 'lap' : heard.has('fleece') ? 'fleece' : 'deck'
  const found = new Set<FactId>([
    ...(['thunder', 'rain', 'power'] as const).filter((id) => heard.has(id)),
    ...(heard.has('wet') ? ([surface] as const) : []),
    ...(heard.has('dirty') ? ([surface === 'lap' ? 'lapClean' : 'deckClean'] as const) : [])
  ])
  return factIds.filter((id) => found.has(id))
}

/** Commands whose words state facts of the sky and the roof. */
const stating: ReadonlySet<string | null> = new Set([null, 'spray', 'air', 'weld'])
/** The label under which each is noted where a command understood it. */
const labels: Readonly<Partial<Record<FactId, string>>> = {
  rain: 'rain',
  lap: 'dry',
  lapClean: 'clean',
  fleece: 'fleece',
  deck: 'dry',
  deckClean: 'clean'
}

/**
 * A refused message with the facts it seems to state. Thunder is heard in whatever was refused, since people may be on the roof; the
 * rest only where no other command was meant, nothing was asked, and the command did not understand it by itself.
 */
export function withFacts(text: string, read: Reading): Reading {
  if (read.ok || !mendedByWords.has(read.refusal.code)) return read
  const { refusal, command } = read
  const { understood } = refusal
  const all = stating.has(command) && !/[?¿]/.test(text)
  const facts = factsIn(text).filter((id) => {
    if (id === 'thunder') return !understood.some(({ label, value }) => label === 'thunder' && value === false)
    return all && !understood.some(({ label }) => label === labels[id])
  })
  return facts.length === 0 ? read : { ...read, refusal: { ...refusal, detail: { ...refusal.detail, facts } } }
}
