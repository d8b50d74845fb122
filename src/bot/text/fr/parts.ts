import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const parts: Pick<Text, 'coupon' | 'strip' | 'probe' | 'kit' | 'foam' | 'laid' | 'site' | 'person' | 'help'> = {
  coupon: {
    passed: (welder) => `éprouvette réussie, ${welder}`,
    failed: (welder) => `éprouvette ratée, ${welder}`,
    notJudged: (welder) => `éprouvette pas jugée, ${welder}`,
    lapsed: (welder) => `validation perdue, ${welder}`,
    welder: 'soudeuse',
    width: (narrowest, least) => `au plus étroit ${narrowest}${least === null ? '' : `, au moins ${least}`}`,
    causes: {
      cold: 'froide ou sale : nettoyer à nouveau, mesurer la tension à l’outil',
      hot: 'trop chaude : brûlée ou brillante',
      uneven: 'inégale : vérifier pression, plis, humidité, buse',
      narrow: 'trop étroite : vérifier recouvrement, trajet, buse, rouleau'
    },
    moves: {
      temperature: { up: 'plus chaud', down: 'moins chaud' },
      speed: { up: 'plus vite', down: 'plus lentement' },
      pressure: { up: 'plus de pression', down: 'moins de pression' }
    },
    next: (moves) => `ensuite : ${moves}`,
    oneAtATime: 'un seul à la fois',
    cleared: 'validée pour souder',
    notCleared: 'pas validée',
    notClearedBy: (cause) => `pas validée (${cause})`,
    lapsedBy: {
      failed: 'éprouvette ratée',
      restart: 'redémarrage',
      power: 'coupure ou autre source',
      source: 'autre source',
      lead: 'autre rallonge',
      set: 'consigne changée',
      speed: 'vitesse changée',
      nozzle: 'buse changée',
      roller: 'rouleau changé',
      operator: 'autre opérateur',
      off: 'arrêté',
      thickness: 'autre épaisseur',
      lot: 'autre lot',
      colour: 'autre couleur',
      'old-sheet': 'ancienne feuille',
      'half-day': 'nouvelle demi-journée',
      air: 'température de l’air changée',
      sheet: 'température de la feuille changée',
      wind: 'vent changé',
      cloud: 'soleil ou nuages changés',
      rain: 'pluie depuis'
    },
    onHold: (metres) => `${metres} en attente : tout sonder, découper jusqu’à deux bonnes, poser des pièces sur les coupes`,
    trend: (mean, sigma) => `largeurs : moyenne ${mean}, écart type ${sigma}`,
    short: (chance) => `risque que la suivante soit trop étroite ${chance}`
  },
  strip: {
    pieces: (count) => counted('fr', count, { one: 'bande de recouvrement', many: 'de bandes de recouvrement', other: 'bandes de recouvrement' }),
    length: (amount) => `longueur ${amount}`,
    land: (amount, least) => `soudure utile de chaque côté ${amount}${least === null ? '' : `, au moins ${least}`}`,
    corners: (radius) => `arrondir les coins, rayon ${radius}`,
    perimeter: (all, robot, hand) => `souder ${all} : robot ${robot}, à la main ${hand}`,
    each: (all, robot, hand) => `souder chacune ${all} : robot ${robot}, à la main ${hand}`,
    together: (all, robot, hand) => `souder en tout ${all} : robot ${robot}, à la main ${hand}`,
    fromRoll: (roll, count) => `d’un rouleau de ${roll} : ${counted('fr', count, { one: 'bande', many: 'de bandes', other: 'bandes' })}`,
    rolls: (count) => `il faut ${counted('fr', count, { one: 'rouleau', many: 'de rouleaux', other: 'rouleaux' })}`
  },
  probe: {
    closeArea: 'fermer la zone',
    noVoids: 'aucun défaut',
    states: { open: 'ouvert', repaired: 'réparé, sonder à nouveau', passed: 'bon' },
    counts: (open, repaired, passed) =>
      `${counted('fr', open, { one: 'ouvert', many: 'd’ouverts', other: 'ouverts' })} · ${repaired} à sonder à nouveau · ${counted('fr', passed, { one: 'bon', many: 'de bons', other: 'bons' })}`,
    number: (n) => `défaut ${n}`,
    course: (n) => `rang ${n}`,
    on: { lap: 'recouvrement longitudinal', end: 'joint d’about', strip: 'bande de recouvrement', patch: 'pièce de renfort' },
    causes: {
      film: 'film',
      parted: 'faces décollées',
      scorched: 'brûlé',
      glossy: 'brillant',
      uneven: 'inégal',
      wrinkled: 'plissé',
      wet: 'mouillé',
      dirty: 'sale',
      cold: 'soudure froide',
      foam: 'mousse dans le recouvrement'
    },
    at: (distance) => `à ${distance}`,
    long: (length) => `${length} de long`,
    rate: (per100m, upper) => `${per100m} défauts par 100 m soudés${upper === null ? '' : `, à 90 % de confiance au plus ${upper}`}`
  },
  kit: {
    name: (kit) => `trousse ${kit}`,
    iso: 'iso',
    resin: 'résine',
    parts: (shell, mean, core) => `estimation : paroi ${shell} · moyenne ${mean} · cœur ${core}`,
    ready: (at) => `prête vers ${theTime(at)}`,
    cold: (at) => `trop froide sur le toit vers ${theTime(at)}`,
    startBy: (at) => `au caisson chauffant avant ${theTime(at)}`,
    mixed: (at) => `mélangée ${at}`,
    expires: (date) => `expire ${date}`,
    lot: (lot) => `lot ${lot}`,
    places: { box: 'caisson chauffant', store: 'dépôt', deck: 'toiture' },
    empty: 'vide',
    none: 'pas encore de trousse : kit K1 iso 24 résine 23 mélangé'
  },
  foam: {
    verdicts: {
      good: 'mousse bonne',
      'iso-rich': 'trop d’iso : foncée ou cassante',
      'resin-rich': 'trop de résine : molle ou collante',
      cold: 'froide : lente, sans montée',
      fast: 'essai non valable : prise bien trop rapide. Vérifier les secondes, la température et le rapport, refaire un essai',
      stop: 'arrêter : stries ou mauvais rapport'
    },
    openTime: (amount) => `temps ouvert ${amount}`,
    scale: (times) => `${times} fois le temps ouvert de la fiche de limites`
  },
  laid: {
    area: (amount) => `posé ${amount}`,
    welded: (robot, hand) => `soudé : robot ${robot}, à la main ${hand}`,
    yield: (real, plan) => `${real} par trousse${plan === null ? '' : `, prévu ${plan}`}`,
    noPlan: 'pas encore de rendement par trousse',
    drift: (amount, thin) =>
      thin
        ? `${amount} de plus par trousse que prévu : couche mince. Vérifier jet, rapport, espacement des passes, température de la trousse`
        : `${amount} de moins par trousse que prévu : couche épaisse ou mousse perdue. Vérifier jet, rapport, recouvrement des passes, température de la trousse`
  },
  site: {
    title: (name) => `chantier ${name}`,
    sites: 'chantiers',
    none: 'pas encore de chantier : commencer NOM à LAT,LON fuseau ZONE',
    keys: {
      place: 'lieu',
      zone: 'fuseau horaire',
      units: 'unités',
      lang: 'langue',
      posts: 'messages',
      morning: 'message du matin',
      evening: 'message du soir',
      days: 'jours de travail',
      hours: 'heures de travail',
      limits: 'fiche de limites',
      substrate: 'support',
      channel: 'canal',
      roof: 'toit'
    },
    units: { metric: 'métriques', us: 'américaines' },
    langs: { en: 'anglais', es: 'espagnol', fr: 'français' },
    posts: { evening: 'soir', morning: 'matin', watch: 'veille', 'wrap-up': 'fin de journée' },
    noPosts: 'aucun',
    substrates: {
      board: 'panneau isolant',
      foil: 'panneau à parement aluminium',
      concrete: 'béton',
      steel: 'bac acier',
      membrane: 'ancienne feuille',
      plywood: 'contreplaqué'
    },
    roof: (width, depth, height) => `${width} × ${depth}, ${height} de haut`,
    noChannel: 'aucun',
    closed: 'chantier fermé'
  },
  person: {
    me: 'vos réglages',
    asSite: 'comme le chantier',
    summary: 'résumé chaque matin, un message pour tous les chantiers',
    undone: (ids, count) => `${plural('fr', count, { one: 'annulé', other: 'annulés' })} : ${ids}`,
    nothingUndone: 'rien à annuler',
    corrected: (id) => `corrigé : ${id}`,
    was: (values) => `avant ${values}`,
    now: (values) => `maintenant ${values}`
  },
  help: {
    commands: 'commandes',
    more: 'Écrire aide et une commande pour voir ses mots : aide spray',
    anyOrder: 'Mots dans n’importe quel ordre, unités métriques ou américaines, mots des trois langues.',
    usage: (usage) => `écrire : ${usage}`,
    example: (example) => `exemple : ${example}`
  }
}
