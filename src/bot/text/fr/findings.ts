import type { ClosingCheck, FindingId } from '../../answer.js'
import type { FindingWords } from '../text.js'

function measured(name: string): FindingWords {
  return { name, is: { go: name, caution: name, unknown: `${name} : pas de donnée`, 'no-go': name } }
}

export const findings: Readonly<Record<Exclude<FindingId, ClosingCheck>, FindingWords>> = {
  'kit-temperature': measured('trousse'),
  'air-temperature': measured('air'),
  'substrate-temperature': measured('support'),
  'dew-margin': measured('écart à la rosée'),
  humidity: measured('humidité'),
  'rain-now': { name: 'pluie', is: { go: 'pas de pluie', caution: 'pluie possible', unknown: 'pluie : pas de donnée', 'no-go': 'il pleut' } },
  'rain-coming': measured('pluie avant mise hors d’eau'),
  'wind-mean': measured('vent moyen'),
  'wind-gust': measured('rafale'),
  daylight: {
    name: 'jour restant après fermeture',
    is: { go: 'il reste du jour', caution: 'il reste peu de jour', unknown: 'jour restant : pas de donnée', 'no-go': 'pas assez de jour pour fermer' }
  },
  'substrate-dry': {
    name: 'support sec',
    is: { go: 'support sec', caution: 'support à peine sec', unknown: 'support sec : pas déclaré', 'no-go': 'support mouillé' }
  },
  'fleece-dry': {
    name: 'feutre sec',
    is: { go: 'feutre sec', caution: 'feutre à peine sec', unknown: 'feutre sec : pas déclaré', 'no-go': 'feutre mouillé' }
  },
  'seam-dry': {
    name: 'joint sec',
    is: { go: 'joint sec', caution: 'joint à peine sec', unknown: 'joint sec : pas déclaré', 'no-go': 'joint mouillé' }
  },
  'substrate-clean': {
    name: 'support propre',
    is: { go: 'support propre', caution: 'support à peine propre', unknown: 'support propre : pas déclaré', 'no-go': 'support sale' }
  },
  'lap-clean': {
    name: 'recouvrement propre',
    is: {
      go: 'recouvrement propre',
      caution: 'recouvrement à peine propre',
      unknown: 'recouvrement propre : pas déclaré',
      'no-go': 'recouvrement sale'
    }
  },
  compatibility: {
    name: 'ce que touche la feuille',
    is: {
      go: 'ce que touche la feuille est compatible',
      caution: 'ce que touche la feuille : demander au fabricant',
      unknown: 'ce que touche la feuille : pas déclaré',
      'no-go': 'feuille au contact de ce qui l’abîme'
    }
  },
  intakes: {
    name: 'prises d’air',
    is: {
      go: 'aucune prise d’air proche',
      caution: 'prises d’air fermées ou masquées',
      unknown: 'prises d’air : pas déclaré',
      'no-go': 'prise d’air ouverte sous le vent'
    }
  },
  'deck-moisture': {
    name: 'essai d’humidité du béton',
    is: {
      go: 'humidité du béton : essai réussi',
      caution: 'humidité du béton près de la limite',
      unknown: 'humidité du béton : pas d’essai',
      'no-go': 'humidité du béton : essai raté'
    }
  },
  'sheet-relaxed': {
    name: 'feuille déroulée depuis',
    is: {
      go: 'feuille détendue',
      caution: 'feuille pas assez détendue',
      unknown: 'feuille détendue : pas déclaré',
      'no-go': 'feuille encore enroulée'
    }
  },
  'kit-mixed': {
    name: 'trousse mélangée',
    is: {
      go: 'trousse mélangée',
      caution: 'trousse mélangée depuis trop longtemps',
      unknown: 'trousse mélangée : pas déclaré',
      'no-go': 'trousse pas mélangée'
    }
  },
  'adhesive-date': {
    name: 'colle, reste avant péremption',
    is: { go: 'colle dans les délais', caution: 'colle bientôt périmée', unknown: 'péremption de la colle : pas de donnée', 'no-go': 'colle périmée' }
  },
  'start-up': {
    name: 'démarrage',
    is: {
      go: 'démarrage fait',
      caution: 'démarrage à moitié fait',
      unknown: 'démarrage : tout n’est pas déclaré',
      'no-go': 'démarrage raté : fuite, pas purgé, essai mauvais ou hors dosage'
    }
  },
  coupon: {
    name: 'éprouvette',
    is: {
      go: 'toutes les soudeuses validées',
      caution: 'éprouvette près de la limite',
      unknown: 'éprouvette : aucune ce jour',
      'no-go': 'soudeuse pas validée'
    }
  },
  power: {
    name: 'chute de tension',
    is: {
      go: 'tension suffisante',
      caution: 'tension près de la limite',
      unknown: 'tension : pas déclarée ce jour',
      'no-go': 'chute de tension trop forte'
    }
  },
  'traffic-wait': {
    name: 'temps depuis la pose de la feuille',
    is: {
      go: 'on peut marcher sur la feuille',
      caution: 'feuille fraîche',
      unknown: 'temps depuis la pose de la feuille : pas de donnée',
      'no-go': 'feuille trop fraîche pour marcher dessus'
    }
  },
  thunder: {
    name: 'tonnerre',
    is: { go: 'pas de tonnerre', caution: 'tonnerre prévu d’ici 2 h', unknown: 'tonnerre : pas de donnée', 'no-go': 'tonnerre' }
  },
  heat: {
    name: 'indice de chaleur',
    is: { go: 'indice de chaleur', caution: 'chaleur', unknown: 'chaleur : pas de donnée', 'no-go': 'trop chaud pour les personnes' }
  },
  cold: {
    name: 'température ressentie',
    is: { go: 'température ressentie', caution: 'froid', unknown: 'froid : pas de donnée', 'no-go': 'trop froid pour les personnes' }
  },
  ice: {
    name: 'température de surface',
    is: { go: 'pas de verglas', caution: 'verglas possible', unknown: 'verglas : pas de donnée', 'no-go': 'verglas : gelé et mouillé' }
  },
  'strip-land': measured('soudure utile de chaque côté'),
  'strip-gap': {
    name: 'écart',
    is: { go: 'écart', caution: 'écart', unknown: 'écart : pas de donnée', 'no-go': 'les feuilles se chevauchent en about' }
  },
  'coupon-width': measured('largeur de soudure'),
  'open-voids': {
    name: 'défauts à reprendre',
    is: { go: 'tous les défauts repris', caution: 'défauts', unknown: 'défauts : pas de donnée', 'no-go': 'défauts à reprendre' }
  },
  'test-spray': {
    name: 'essai de mousse',
    is: {
      go: 'essai de mousse bon',
      caution: 'essai de mousse douteux',
      unknown: 'essai de mousse : pas jugé',
      'no-go': 'essai de mousse mauvais : arrêter'
    }
  }
}
