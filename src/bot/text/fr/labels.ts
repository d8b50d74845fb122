import type { LabelId } from '../labels.js'

export const labels: Readonly<Record<LabelId, string>> = {
  air: 'air', substrate: 'support', deck: 'support', sheet: 'feuille', rh: 'humidité', humidity: 'humidité', dew: 'point de rosée', wind: 'vent', gust: 'rafale', sun: 'soleil',
  rain: 'pluie', thunder: 'tonnerre', kit: 'trousse', iso: 'iso', resin: 'résine', exp: 'péremption', expiry: 'péremption', dry: 'sec', wet: 'mouillé', clean: 'propre', dirty: 'sale',
  fleece: 'feutre', lap: 'recouvrement', compatible: 'compatible', contact: 'au contact', ask: 'demander au fabricant', compatibility: 'compatibilité', intakes: 'prises d’air', none: 'aucune', shut: 'fermée', open: 'ouverte',
  rolled: 'enroulé', unrolled: 'déroulé', relaxed: 'détendu', start: 'début', mixed: 'mélangé', tight: 'serré', purged: 'purgé', nozzle: 'buse', tested: 'testé', leak: 'fuite',
  moisture: 'essai d’humidité', thumb: 'essai du pouce', film: 'pellicule', parted: 'décollé', scorched: 'brûlé', glossy: 'brillant', uneven: 'inégal', wrinkled: 'plissé', peel: 'pelage',
  warm: 'chaud', restart: 'redémarrage', power: 'coupure', hand: 'main', robot: 'robot', set: 'consigne', speed: 'vitesse', thick: 'épaisseur', operator: 'opérateur', welder: 'soudeuse',
  width: 'largeur', lead: 'câble', course: 'rang', end: 'joint d’about', strip: 'bande', patch: 'pièce', gap: 'écart', off: 'décalage', edge: 'bord', distance: 'distance', length: 'longueur',
  cause: 'origine', void: 'défaut', fixed: 'réparé', passed: 'bon', failed: 'mauvais', box: 'caisse', store: 'dépôt', lot: 'lot', used: 'utilisé', empty: 'vide', area: 'surface',
  sheets: 'feuilles', roll: 'rouleau', times: 'combien', reason: 'motif', name: 'nom', time: 'heure', date: 'date', site: 'chantier', place: 'lieu', zone: 'fuseau', lang: 'langue',
  units: 'unités', posts: 'messages', morning: 'matin', evening: 'soir', days: 'jours', hours: 'heures', limits: 'fiche de limites', channel: 'canal', number: 'numéro', id: 'entrée', command: 'commande'
}
