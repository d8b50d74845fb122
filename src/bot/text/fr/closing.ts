import type { ClosingWords } from '../closing-words.js'
import { counted } from '../plural.js'
import { atTheTime, ofTheTime, untilTheTime } from './at-time.js'

export const closing: ClosingWords = {
  mend: {
    weld: 'réparer : soulever, nettoyer, sécher, réchauffer, presser, laisser refroidir',
    patch: (why, length) => `poser une pièce, ne pas ressouder (${why}) : ${length} le long de la soudure, au-delà du défaut de tous côtés`,
    cutAndPatch: (length) => `couper la mousse et poser une pièce : ${length} le long de la soudure`,
    why: { char: 'carbonisé', failed: 'mauvais encore après réparation', long: 'trop long', foam: 'mousse durcie dans le recouvrement' },
    probeAgain: (length) => `puis sonder ${length}, au-delà de chaque côté`,
    wantsPatch: (number) => `celui-ci demande une pièce : dire probe ${number} mauvais, poser la pièce, puis probe ${number} réparé pièce`,
    waitFirst: (at) => `ATTENDRE ${untilTheTime(at)} : sondé à chaud, ne rien fermer encore`,
    probedWarm: (at) =>
      `pas encore froid : une soudure chaude cache un défaut. Sonder encore ${atTheTime(at)} ; s’il s’ouvre, noter un nouveau défaut`,
    waitUntil: (at) => `pas encore froid : une soudure chaude cache un défaut. Attendre ${untilTheTime(at)} et sonder à nouveau, ou dire refroidi`,
    under: (list) => `encore ouvert dans le recouvrement dessous : défaut ${list} ; les recouvrements se réparent avant d’être couverts`,
    dated: (at) => `daté ${ofTheTime(at)}`,
    photos: (count) => counted('fr', count, { one: 'photo', many: 'de photos', other: 'photos' })
  },
  bond: {
    square: (substrate) => `carré d’essai, ${substrate}`,
    none: 'pas de carré d’essai aujourd’hui',
    breaks: { foam: 'mousse sur les deux faces', fleece: 'feutre arraché', facer: 'parement arraché', face: 'une face propre' },
    force: (amount) => `force ${amount}`,
    stress: (amount) => `${amount} kPa`,
    wanted: (amount) => `exigé ${amount}`
  },
  seal: {
    title: 'joint de nuit',
    edge: (amount) => `bord ouvert ${amount}`,
    noEdge: 'aucun bord ouvert',
    methods: { tape: 'au ruban', foam: 'à la mousse', mastic: 'au mastic', welded: 'soudé', weighed: 'lesté' },
    by: (who) => `par ${who}`,
    cut: 'joint de la nuit coupé',
    wet: (amount) => `feutre mouillé coupé sur ${amount}`,
    toCut: (amount) => `le joint d’hier est à couper : ${amount} ; couper le feutre mouillé, puis dire seal coupé`,
    photos: (count) => counted('fr', count, { one: 'photo', many: 'de photos', other: 'photos' })
  },
  open: {
    voids: (list) => `défauts à réparer : ${list}`,
    reprobe: (list) => `défauts à sonder à nouveau : ${list}`,
    nothing: 'rien ne reste ouvert'
  },
  fire: {
    title: 'finir la surveillance incendie',
    running: (until, left) => `${untilTheTime(until)}, encore ${left}`,
    heat: (at) => `dernière chaleur ${at} ; plus tard encore : dire fire chaleur`,
    noHeat: 'aucune chaleur notée aujourd’hui ni hier',
    unsigned: (at) => `écoulée ${atTheTime(at)} : regarder encore une fois, puis dire fire terminé`,
    done: (who) => `tenue jusqu’au bout${who === null ? '' : ` par ${who}`}`,
    length: (amount) => `durée ${amount}`,
    permit: 'Le permis de feu décide de la durée ; la dire : fire 2 h'
  },
  detail: {
    title: 'détails',
    kinds: {
      corners: 'angles',
      pipes: 'tuyaux',
      drains: 'évacuations',
      terminations: 'arrêts',
      cutEdges: 'bords coupés',
      tSteps: 'décrochements en T'
    },
    statuses: { good: 'bon', bad: 'à réparer', none: 'aucun ici', unknown: 'pas vérifié' }
  },
  punch: {
    title: 'réserves',
    item: (number, text) => `${number} : ${text}`,
    states: { open: 'à lever', done: 'levée' },
    counts: (open, done) => `${open} à lever · ${counted('fr', done, { one: 'levée', many: 'de levées', other: 'levées' })}`,
    empty: 'aucune réserve'
  },
  photo: {
    kept: (of) => `Photo gardée : ${of}`,
    day: 'fin de journée',
    punch: (number) => `réserve ${number}`,
    problems: {
      empty: 'le fichier est vide',
      'too-large': 'elle dépasse 8 Mo ; en envoyer une plus petite',
      heic: 'c’est une photo HEIC ; régler l’appareil sur JPEG (plus compatible) ou l’envoyer en JPEG',
      'not-a-photo': 'ce n’est pas une photo ; envoyer un JPEG ou un PNG',
      damaged: 'l’image est abîmée ; la reprendre',
      away: 'le service de messagerie ne l’a pas donnée ; elle peut être redemandée',
      'not-found': 'elle n’est plus là, ou je ne peux pas la voir',
      gone: 'ce qu’elle montre a été annulé'
    },
    notKept: (why) => `La photo n’a pas été gardée : ${why}. Ce qui a été dit reste noté.`,
    alone: 'Une photo seule ne dit rien encore : que montre-t-elle ?',
    along: (count) => counted('fr', count, { one: 'photo jointe', many: 'de photos jointes', other: 'photos jointes' })
  },
  since: (state, at) => `${state} depuis ${at}`,
  findings: {
    'bond-square': {
      name: 'carré d’essai',
      is: { go: 'carré d’essai bon', caution: 'carré d’essai douteux', unknown: 'carré d’essai : pas jugé', 'no-go': 'carré d’essai mauvais' }
    },
    'night-seal': {
      name: 'joint de nuit',
      is: { go: 'bord ouvert fermé', caution: 'joint de nuit douteux', unknown: 'bord ouvert : pas déclaré', 'no-go': 'bord ouvert pas fermé' }
    },
    'drains-open': {
      name: 'évacuations',
      is: { go: 'évacuations ouvertes', caution: 'évacuations douteuses', unknown: 'évacuations : pas déclarées', 'no-go': 'évacuations bouchées' }
    },
    'sheets-safe': {
      name: 'feuilles volantes',
      is: {
        go: 'aucune feuille volante',
        caution: 'feuilles mal tenues',
        unknown: 'feuilles volantes : pas déclarées',
        'no-go': 'des feuilles volantes'
      }
    },
    'fire-watch': {
      name: 'surveillance incendie',
      is: {
        go: 'aucune surveillance incendie en cours',
        caution: 'surveillance incendie',
        unknown: 'surveillance incendie écoulée, pas signée',
        'no-go': 'surveillance incendie en cours'
      }
    },
    details: {
      name: 'détails',
      is: { go: 'tous les détails vérifiés', caution: 'détails', unknown: 'détails : pas tous vérifiés', 'no-go': 'détails à réparer' }
    },
    'punch-list': {
      name: 'réserves',
      is: { go: 'réserves levées', caution: 'réserves à lever', unknown: 'réserves : inconnues', 'no-go': 'réserves à lever' }
    }
  },
  fixes: {
    'test:bond': 'arrêter, chercher la cause, couper et recoller, puis un nouveau carré d’essai',
    'wait:cured': 'laisser durcir, puis peler',
    'state:bond': 'peler un carré d’essai et déclarer où il a rompu',
    'seal:edge': 'fermer le bord ouvert et déclarer comment',
    'state:seal': 'déclarer le bord ouvert et comment il est fermé',
    'open:drains': 'déboucher les évacuations',
    'state:drains': 'regarder et déclarer : évacuations ouvertes',
    'roll:sheets': 'enrouler ou lester les feuilles volantes',
    'state:rolled': 'regarder et déclarer : enroulées',
    'watch:fire': 'rester et surveiller',
    'state:heat': 'dire la dernière chaleur',
    'state:fire': 'regarder encore une fois et déclarer : fire terminé',
    'mend:detail': 'réparer les détails qui ne sont pas bons',
    'state:detail': 'regarder les détails et les déclarer',
    'mend:punch': 'lever les réserves'
  },
  toSay: {
    'state:bond': 'mousse',
    'state:seal': 'LONGUEUR ruban',
    'state:drains': 'évacuations ouvertes',
    'state:rolled': 'enroulées',
    'state:heat': 'chaleur @HEURE',
    'state:fire': 'terminé',
    'state:detail': 'angles tuyaux évacuations'
  },
  states: { 'no-heat': 'aucune chaleur notée', running: 'le temps n’est pas écoulé', done: 'fait', 'open-punch': 'des réserves restent' },
  buttons: {
    seal: 'Joint de nuit',
    fireDone: 'Surveillé jusqu’au bout',
    punch: 'Ajouter une réserve',
    detail: 'Vérifier les détails',
    photo: 'Redemander la photo',
    patched: 'Pièce posée'
  },
  labels: {
    photo: 'photo',
    repair: 'réparation',
    lifted: 'soulevé',
    cleaned: 'nettoyé',
    dried: 'séché',
    reheated: 'réchauffé',
    cooled: 'refroidi',
    broke: 'lieu de rupture',
    force: 'force',
    wanted: 'exigé',
    square: 'carré',
    cured: 'durci',
    facer: 'parement',
    face: 'face propre',
    method: 'méthode',
    tape: 'ruban',
    mastic: 'mastic',
    welded: 'soudé',
    weighed: 'lesté',
    drains: 'évacuations',
    loose: 'feuilles volantes',
    cutOff: 'coupé',
    heat: 'chaleur',
    done: 'fait',
    watch: 'surveillance',
    corners: 'angles',
    pipes: 'tuyaux',
    terminations: 'arrêts',
    cutEdges: 'bords coupés',
    tSteps: 'décrochements en T',
    detail: 'détail',
    punch: 'réserve',
    fire: 'surveillance incendie',
    text: 'texte',
    all: 'tous',
    board: 'panneau isolant',
    foil: 'panneau à parement aluminium',
    concrete: 'béton',
    steel: 'bac acier',
    membrane: 'ancienne feuille',
    plywood: 'contreplaqué'
  }
}
