import type { FactWords } from '../fact-words.js'

export const facts: FactWords = {
  notLogged: (list) => `Pas encore noté : ${list}`,
  write: 'Pour le noter, envoyer la ligne qui convient :',
  topics: {
    thunder: {
      name: 'tonnerre',
      say: [
        ['tonnerre ou éclairs', '/air tonnerre'],
        ['aucun', '/air sans tonnerre']
      ]
    },
    rain: {
      name: 'pluie',
      say: [
        ['il pleut', '/air pluie'],
        ['pas de pluie maintenant', '/air sans pluie']
      ]
    },
    deck: {
      name: 'toit mouillé ou sec',
      say: [
        ['toit mouillé', '/spray support mouillé'],
        ['toit sec', '/spray support sec']
      ]
    },
    deckClean: {
      name: 'toit propre ou sale',
      say: [
        ['toit sale', '/spray support sale'],
        ['toit propre', '/spray support propre']
      ]
    },
    fleece: {
      name: 'feutre mouillé ou sec',
      say: [
        ['feutre mouillé', '/spray feutre mouillé'],
        ['feutre sec', '/spray feutre sec']
      ]
    },
    lap: {
      name: 'recouvrement mouillé ou sec',
      say: [
        ['recouvrement mouillé', '/weld recouvrement mouillé'],
        ['recouvrement sec', '/weld recouvrement sec']
      ]
    },
    lapClean: {
      name: 'recouvrement propre ou sale',
      say: [
        ['recouvrement sale', '/weld recouvrement sale'],
        ['recouvrement propre', '/weld recouvrement propre']
      ]
    },
    power: {
      name: 'coupure de courant',
      say: [
        ['coupure à l’automate', '/weld robot coupure'],
        ['à la soudeuse manuelle', '/weld main coupure']
      ]
    }
  }
}
