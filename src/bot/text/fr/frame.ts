import type { Text } from '../text.js'

const local = 'Les règles locales et les gens du métier agréés passent d’abord.'

export const frame: Pick<Text, 'outcomes' | 'outcomesWithin' | 'activities' | 'groups' | 'commands' | 'cautions' | 'frame'> = {
  outcomes: { go: 'ON Y VA', caution: 'PRUDENCE', unknown: 'INCONNU', 'no-go': 'ON N’Y VA PAS' },
  outcomesWithin: { go: 'on y va', caution: 'prudence', unknown: 'inconnu', 'no-go': 'on n’y va pas' },
  activities: { spray: 'pulvériser', lay: 'poser des feuilles', weld: 'souder', people: 'personnes sur le toit' },
  groups: { conditions: 'météo et surfaces', checklist: 'vérifications', people: 'personnes' },
  commands: {
    spray: 'peut-on pulvériser ? Avec mesures et vérifications',
    air: 'noter air et vent : pose des feuilles, personnes sur le toit',
    weld: 'peut-on souder ? Éprouvettes, changements, validation',
    strip: 'bande de recouvrement : longueur, soudure utile, mètres',
    sheets: 'calepinage',
    probe: 'défauts : ouvrir, réparer, sonder à nouveau, liste',
    kit: 'trousses : température, prêtes quand, péremption, lieu',
    foam: 'essai de mousse : bon ou arrêter, temps ouvert',
    laid: 'noter la surface posée et les mètres soudés',
    bond: 'carré d’essai du jour : où il a rompu',
    seal: 'joint de nuit, évacuations, feuilles volantes, et ce qui reste ouvert',
    fire: 'surveillance incendie après la dernière chaleur',
    detail: 'liste des détails',
    punch: 'réserves à lever avant la remise',
    day: 'les heures possibles, dernière feuille, quoi préparer',
    site: 'voir ou régler un chantier',
    start: 'préparer un chantier en une minute',
    role: 'qui est chef de chantier, et en nommer un',
    help: 'cette liste, ou une commande',
    me: 'votre langue et vos unités',
    undo: 'annuler ce que vous avez noté depuis moins de 10 min',
    correct: 'mettre d’autres valeurs à la place d’une note : les deux restent au registre'
  },
  cautions: {
    isocyanates: `Isocyanates : gants, yeux, protection respiratoire, tenir les autres à l’écart. ${local}`,
    hotAir: `Air chaud et câbles : brûlures, électrocution, surveillance du feu après. ${local}`,
    edges: `Bords et vent : protection contre les chutes, lester les feuilles. ${local}`,
    blade: `Lames et bords : couper vers l’extérieur, protection contre les chutes. ${local}`,
    thunder: `Foudre : quitter le toit jusqu’à 30 min après le dernier tonnerre. ${local}`,
    heat: `Chaleur : eau, ombre, pauses, les nouveaux d’abord. ${local}`,
    cold: `Froid : vêtements chauds, pauses au chaud, veiller les uns aux autres. ${local}`,
    ice: `Verglas : glissades et chutes, ne pas y aller avant la fin. ${local}`,
    hurt: `Quelqu’un de blessé ? Arrêtez, secourez d’abord, appelez les urgences. Mousse dans les yeux ou sur la peau : rincez aussitôt à grande eau. Brûlure : refroidissez sous l’eau courante. Gardez la fiche de données de sécurité à portée. ${local}`
  },
  frame: {
    quote: (word) => `« ${word} »`,
    colon: ' : ',
    no: 'non',
    or: 'ou',
    more: (count) => `et ${count} de plus`,
    logged: (ids) => `noté sous ${ids}`,
    notDrawn: (names, ref) => `pas dessiné : ${names}. Ce qui est noté reste noté. Redemander ; si cela dure, prévenir qui gère le bot : ${ref}`,
    undo: (ids) => `annuler sous 10 min (annuler ${ids})`,
    decision: (id) => `décision ${id}`,
    attribution: {
      met: 'Données de MET Norway',
      nws: 'Données du US National Weather Service',
      'open-meteo': 'Données météo par Open-Meteo.com',
      sample: 'Météo : semaine inventée, démonstration'
    },
    from: (source) => `Météo de ${source}`,
    issued: (at) => `émis ${at}`,
    stale: 'plus de 3 h',
    sample: 'semaine inventée, démonstration',
    invented: 'chantier inventé',
    noForecast: 'pas de prévision pour cet endroit',
    forecastLacks: (setting) => `pas de prévision : définir ${setting} (README, Settings)`,
    limits: (id, version) => `fiche de limites ${id} v${version}`
  }
}
