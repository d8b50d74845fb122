import { plural } from '../plural.js'
import type { TalkWords } from '../talk-words.js'

export const talk: TalkWords = {
  buttons: {
    undo: 'Annuler', checklist: 'Déclarer la liste', readings: 'Noter des mesures', coupon: 'Nouvelle éprouvette', void: 'Noter un défaut', fixed: 'Réparé', passed: 'Sondé : bon',
    failed: 'Sondé : mauvais', spray: 'On peut pulvériser ?', list: 'Liste des défauts'
  },
  forms: { checklist: 'Avant de pulvériser', readings: 'Mesures', coupon: 'Éprouvette de soudure', void: 'Défaut au sondage' },
  send: 'Noter', cancel: 'Fermer',
  fields: {
    surfaces: 'Surfaces et feuilles', dry: 'Support sec', fleeceDry: 'Feutre sec', clean: 'Support propre', relaxed: 'Feuilles déroulées et détendues', noRain: 'Pas de pluie maintenant', noThunder: 'Pas de tonnerre entendu',
    kit: 'Trousse', mixed: 'Les deux composants mélangés', expiry: 'La trousse expire le', startUp: 'Mise en route, dans cet ordre', tight: 'Tuyaux serrés, sans fuite', purged: 'Les deux composants purgés, jets égaux',
    nozzle: 'Buse montée', tested: 'Essai de pulvérisation bon', intakes: 'Prises d’air, voitures, gens sous le vent', intakesNone: 'Aucune', intakesShut: 'Fermées ou protégées', intakesOpen: 'Ouvertes',
    contact: 'Ce que touche la feuille', compatible: 'Compatible ou séparé', touches: 'Bitume, goudron ou mousse nue : contact', askMaker: 'Pas sûr : demander', weather: 'Météo',
    air: 'Air', deck: 'Surface du support', humidity: 'Humidité, %', wind: 'Vent moyen', gust: 'Rafale', rainChance: 'Risque de pluie, %', iso: 'Iso', resin: 'Résine',
    welder: 'Appareil', robot: 'Automate', hand: 'Soudeuse manuelle', widths: 'Largeurs', peel: 'Au pelage', film: 'Le film se détache de la trame', parted: 'Les faces se décollent lisses', scorched: 'Brûlé',
    glossy: 'Brillant', uneven: 'Inégal', wrinkled: 'Plissé', warm: 'Refroidie', warmYes: 'Encore chaude', course: 'Rang', on: 'Où', lap: 'Recouvrement', end: 'Joint d’about', strip: 'Bande de recouvrement',
    patch: 'Pièce de renfort', distance: 'Distance le long du rang', length: 'Longueur du défaut', cause: 'Cause vue', wet: 'Mouillé', dirty: 'Sale', cold: 'Soudure froide'
  },
  working: 'En cours : rien n’est encore noté. La réponse suit ici.',
  failed: (ref) => `Une panne de notre côté. Rien n’a été noté. Redites-le ; si cela dure, donnez cette référence à votre chef : ${ref}`,
  gone: 'Ce bouton n’a plus rien à faire ici. Redemandez.',
  home: (sites) => plural('fr', sites, { one: `${sites} chantier`, other: `${sites} chantiers` }),
  noSites: 'Pas encore de chantier ici.',
  howToBegin: 'Un responsable en crée un : site new NOM at LAT,LON zone Région/Ville',
  openVoids: (count) => plural('fr', count, { one: `${count} défaut non réglé`, other: `${count} défauts non réglés` }),
  inventedSite: 'chantier et météo inventés', askNow: 'maintenant'
}
