import type { RefusalWords, Wrong } from '../text.js'

function of({ word, label }: Wrong): string {
  if (word === null) return label ?? 'un mot'
  return label === null ? word : `${word} (${label})`
}

export const refusal: RefusalWords = {
  codes: {
    empty: () => 'Il n’y avait rien à lire.',
    'too-long': () => 'Trop long : 2000 caractères au plus.',
    'unknown-command': (wrong) => `Commande inconnue : ${of(wrong)}.`,
    'unknown-word': (wrong) => `Pas compris : ${of(wrong)}.`,
    missing: (wrong) => `Il manque : ${wrong.label ?? of(wrong)}.`,
    'bad-number': (wrong) => `Ne se lit pas comme un nombre : ${of(wrong)}.`,
    'ambiguous-number': (wrong) => `Nombre ambigu : ${of(wrong)}.${wrong.whole === null ? '' : ` Écrire ${wrong.whole} ou ${wrong.decimal}.`}`,
    'wrong-unit': (wrong) => `Mauvaise unité : ${of(wrong)}.`,
    'out-of-range': (wrong) => `Hors limites : ${of(wrong)}${range(wrong)}${stated(wrong)}.`,
    inconsistent: (wrong) => `Ne va pas ensemble : ${of(wrong)}${wrong.other === null ? '' : ` et ${wrong.other}`}${stated(wrong)}.`,
    duplicate: (wrong) => `Donné deux fois avec deux valeurs : ${of(wrong)}.`,
    'not-found': (wrong) => `Introuvable : ${of(wrong)}.`,
    'wrong-state': (wrong) => `Pas possible maintenant : ${of(wrong)}${wrong.state === null ? '' : `, ${wrong.state}`}.`,
    'not-allowed': (wrong) => (wrong.who === null ? `Pas permis : ${of(wrong)}.` : `Pas permis : seulement ${wrong.who}.`),
    'no-site': (wrong) => (wrong.word === null ? 'On ne sait pas quel chantier.' : `Ce chantier n’existe pas : ${wrong.word}.`),
    'bad-option': (wrong) => `Mauvaise option : ${of(wrong)}.`,
    config: (wrong) => `Mauvais réglages : ${of(wrong)}.`,
    store: (wrong) => `Le journal ne répond pas${wrong.word === null ? '' : ` : ${wrong.word}`}.`,
    'weather-file': (wrong) => `Fichier météo illisible : ${of(wrong)}.`,
    internal: (wrong) => `Une panne interne${wrong.ref === null ? '' : `, référence ${wrong.ref}`}.`
  },
  next: {
    empty: 'Écrire aide pour la liste des commandes.',
    'too-long': 'Écrire moins, en plusieurs messages.',
    'unknown-command': 'Écrire aide pour la liste des commandes.',
    'unknown-word': null,
    missing: null,
    'bad-number': 'Écrire des chiffres, une virgule ou un point : 12,5',
    'ambiguous-number': null,
    'wrong-unit': null,
    'out-of-range': 'Vérifier la valeur et son unité.',
    inconsistent: null,
    duplicate: 'Le donner une seule fois.',
    'not-found': null,
    'wrong-state': null,
    'not-allowed': 'Demander à un chef de chantier.',
    'no-site': 'Demander dans le canal du chantier, ou en créer un : commencer NOM à LAT,LON fuseau ZONE',
    'bad-option': null,
    config: 'Corriger les réglages et redémarrer.',
    store: 'Réessayer. Si cela dure, prévenir qui gère le bot.',
    'weather-file': 'Donner un fichier de prévision d’une source connue.',
    internal: 'Prévenir qui gère le bot, avec la référence.'
  },
  nameSite: 'Le nommer : --site NOM. Ou en créer un : commencer NOM à LAT,LON fuseau ZONE',
  nothingLogged: 'Rien n’a été noté.',
  understood: (list) => `Compris : ${list}`,
  nearest: (list) => `Vouliez-vous dire ${list} ?`,
  sites: (list) => `Chantiers : ${list}`,
  who: { supervisor: 'les chefs de chantier', supervisors: 'les chefs de chantier', author: 'celui qui l’a noté', crew: 'l’équipe' },
  states: {
    crossing: 'les côtés se croisent, se touchent ou reviennent',
    'meets-edge': 'l’ouverture touche le bord de la toiture',
    'meets-opening': 'les ouvertures se touchent ou se chevauchent',
    outside: 'elle est hors de la toiture',
    'within-opening': 'elle est dans une autre ouverture',
    'corners-few': 'au moins trois coins',
    'side-short': 'un côté fait moins de 10 mm',
    flat: 'sans surface',
    'too-large': 'trop grand à calepiner',
    'sheet-wide': 'le lé est plus large que la toiture',
    'lap-wide': 'le recouvrement doit faire moins de la moitié du lé',
    'roll-short': 'le rouleau doit faire au moins 1 m',
    'gap-wide': 'l’écart est aussi large que la bande',
    'patch-layers': 'les pièces commencent à trois couches',
    'nothing-on-hold': 'rien n’est en attente',
    'not-probed': 'd’abord tout sonder : souder NOM sondé',
    'no-good-cuts': 'd’abord découper jusqu’à deux prélèvements bons : souder NOM prélèvement LARGEUR PELAGE',
    'open-voids': 'des défauts restent ouverts : les réparer et les sonder d’abord',
    taken: 'il est à un autre chantier',
    closed: 'fermé',
    exists: 'il y en a déjà un',
    undone: 'déjà annulé',
    'is-go': 'aucune dérogation à faire : la réponse est déjà favorable',
    'too-late': 'noté depuis plus de 10 min',
    'built-on': 'une entrée plus récente en dépend',
    decision: 'les décisions restent',
    override: 'un passage outre reste',
    undo: 'une annulation reste',
    correction: 'une correction reste',
    setting: 'le régler à nouveau'
  }
}

function range({ from, to }: Wrong): string {
  if (from !== null && to !== null) return ` : de ${from} à ${to}`
  if (from !== null) return ` : au moins ${from}`
  return to === null ? '' : ` : au plus ${to}`
}

function stated({ state }: Wrong): string {
  return state === null ? '' : ` : ${state}`
}
