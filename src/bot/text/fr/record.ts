import { counted } from '../plural.js'
import type { RecordWords } from '../record-words.js'
import { codes, members } from './record-members.js'

const ofOpen = { one: 'ouvert', many: 'd’ouverts', other: 'ouverts' }

export const record: RecordWords = {
  title: (site) => `Registre du jour, ${site}`,
  packet: (site) => `Dossier de clôture, ${site}`,
  sections: {
    stillOpen: 'Ce qui reste ouvert en fin de journée',
    summary: 'Résumé',
    forecast: 'Temps prévu',
    said: 'Mesures et déclarations',
    decisions: 'Décisions et dérogations',
    kits: 'Trousses et mousse',
    welds: 'Soudeuses et éprouvettes',
    laid: 'Posé et soudé',
    voids: 'Défauts, réparations, sondages',
    closing: 'Essais d’adhérence, joint de nuit, surveillance incendie, détails, réserves',
    other: 'Autres inscriptions',
    log: 'Tout le registre du jour',
    proof: 'Preuve'
  },
  columns: {
    time: 'heure',
    who: 'qui',
    about: 'sur',
    what: 'quoi',
    entry: 'inscription',
    activity: 'travail',
    outcome: 'résultat',
    binds: 'ce qui décide',
    limits: 'fiche de limites, moteur',
    type: 'sorte',
    hash: 'hash',
    number: 'défaut',
    state: 'état en fin de journée',
    where: 'où',
    day: 'jour',
    logged: 'inscrit à',
    via: 'par',
    data: 'données',
    notes: 'notes'
  },
  facts: {
    site: 'Chantier',
    place: 'Lieu',
    roof: 'Toiture',
    substrate: 'Support',
    zone: 'Fuseau horaire',
    limits: 'Fiche de limites',
    entries: 'Inscriptions',
    area: 'Surface posée',
    welded: 'Soudé',
    coupons: 'Éprouvettes',
    voids: 'Défauts',
    decisions: 'Décisions',
    overrides: 'Dérogations',
    weather: 'Source météo',
    anchor: 'Ancre',
    madeAt: 'Établi',
    days: 'Jours'
  },
  types: {
    reading: 'mesure',
    statement: 'déclaration',
    kit: 'trousse',
    coupon: 'éprouvette',
    welder: 'soudeuse',
    void: 'défaut',
    repair: 'réparation',
    probe: 'sondage',
    laid: 'posé',
    bond: 'essai d’adhérence',
    seal: 'joint de nuit',
    decision: 'décision',
    override: 'dérogation',
    correction: 'correction',
    undo: 'annulation',
    photo: 'photo',
    note: 'note',
    setting: 'réglage'
  },
  members,
  codes,
  nothingOpen: 'Rien ne reste ouvert.',
  yes: 'oui',
  no: 'non',
  nothing: 'Rien n’a été inscrit.',
  pageWords: ['page', 'sur'],
  coupons: (passed, failed, unjudged) =>
    `${counted('fr', passed, { one: 'réussie', many: 'de réussies', other: 'réussies' })}, ${counted('fr', failed, { one: 'ratée', many: 'de ratées', other: 'ratées' })}, ${counted('fr', unjudged, { one: 'pas jugée', many: 'de pas jugées', other: 'pas jugées' })}`,
  voids: (opened, open, again, passed) =>
    `ce jour ${counted('fr', opened, ofOpen)} · en tout : ${counted('fr', open, ofOpen)}, ${again} à sonder à nouveau, ${counted('fr', passed, { one: 'bon', many: 'de bons', other: 'bons' })}`,
  undone: (entry) => `annulée par ${entry}`,
  corrected: (entry) => `corrigée par ${entry}`,
  loggedAt: (time) => `inscrite ${time}`,
  override: (outcome, reason) => `dérogation à ${outcome} : ${reason}`,
  knownAt: (time) => `Tel que connu à ${time}, d’après la prévision de la première décision du jour.`,
  photo: (entry, time) => `Photo ${entry}, ${time}`,
  photoMissing: 'Le registre nomme une photo qui n’est pas conservée ici.',
  proof: (anchor) =>
    `Chaque inscription porte le hash de la précédente. L’ancre ${anchor} répond de tout le registre jusqu’à elle : avec "verify --anchor ${anchor}", qui a le registre voit si quelque chose a été changé, retiré ou ajouté avant elle.`,
  deferral:
    'Ce registre contient ce qui a été dit et mesuré sur la toiture et ce que la fiche de limites en a fait. La fiche du fabricant, le concepteur, les règles locales et le professionnel habilité passent avant.',
  alt: (site, date, entries) =>
    `Registre du jour de ${site}, ${date} : ${counted('fr', entries, { one: 'inscription', other: 'inscriptions' })}, décisions, éprouvettes, défauts, surfaces et l’ancre du registre.`,
  altTable: (site, date, rows) => `Registre de ${site}, ${date}, en tableau : ${counted('fr', rows, { one: 'ligne', other: 'lignes' })}.`
}
