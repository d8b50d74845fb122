import type { Usages } from '../usages.js'

export const usages: Usages = {
  spray: {
    usage:
      'spray [air T] [support T] [hr N] [vent V] [rafale V] [pluie | pluie N % | sans pluie] [sans tonnerre] [trousse T] [sec] [propre] [mélangé] [détendu] [serré purgé buse testé] · spray outrepasser MOTIF',
    example: '/spray air 20 support 18 hr 60 vent 10 rafale 18 pluie 10 % sec propre'
  },
  air: { usage: 'air [air T] [hr N] [vent V] [rafale V] [pluie N %] [tonnerre | sans tonnerre]', example: '/air vent 18 rafale 30 sans tonnerre' },
  weld: {
    usage:
      'weld [feuille T] [recouvrement propre] [sec] [rallonge L SECTION] · weld NOM LARGEUR… PELAGE [prélèvement] [chaud] [consigne T] [vitesse V] [épaisseur MM] [lot L] [couleur C] [par QUI] · weld NOM redémarrage | coupure | source | rallonge | consigne T | vitesse V | buse | rouleau | opérateur QUI | épaisseur MM | lot L | couleur C | vieille | arrêt | sondé | libéré [L] | graphique',
    example: '/weld robot 41 40 42 mm film consigne 480 vitesse 2,5'
  },
  strip: { usage: 'strip LARGEUR [écart E] [décalage D] [bord L] [feuilles N] [rouleau L] [xN] [dessin]', example: '/strip 2 m écart 6 mm' },
  sheets: {
    usage:
      'sheets LARGEURxPROFONDEUR [encoche LxP ne | se | so | no] [ouverture LxP à X,Y] | X,Y X,Y X,Y… [ouverture …] · avec [sens x | y] [hauteur H] [zones en | asce | nbcc] [feuille L] [recouvrement R] [rouleau L]',
    example: '/sheets 24x36 m ouverture 2x1,2 à 5,9'
  },
  probe: {
    usage:
      'probe rang N [recouvrement | about | bande | pièce] [DISTANCE m] LONGUEUR [CAUSE…] [refroidi] · probe N réparé [soulevé nettoyé séché réchauffé refroidi] [pièce] | bon | mauvais · probe liste',
    example: '/probe rang 4 about 3,2 m 40 mm mouillé'
  },
  kit: {
    usage:
      'kit · kit NOM [iso T] [résine T] [T] [caisse | dépôt | toiture [T]] [mélangé] [expire DATE] [lot L] [utilisé SURFACE] [reste N N %] [vide]',
    example: '/kit K7 iso 24 résine 23 mélangé caisse 28'
  },
  foam: { usage: 'foam [SECONDES s] [régulier | stries | foncé | cassant | mou | collant | plat]', example: '/foam 45 s régulier' },
  laid: {
    usage: 'laid SURFACE [feuilles N] [rang N] [trousse NOM] [robot LONGUEUR] [main LONGUEUR] [NOM LONGUEUR]',
    example: '/laid 42 m2 feuilles 2 rang 4 trousse K7 robot 20 main 4'
  },
  bond: {
    usage: 'bond [SUPPORT] [FORCE N | lbf] [mousse | feutre | parement | propre] [exigé FORCE] [carré CÔTÉ] [frais] · bond',
    example: '/seamhand bond panneau 900 N mousse'
  },
  seal: {
    usage:
      'seal [LONGUEUR [ruban | mousse | mastic | soudé | lesté] | aucun] [évacuations ouvertes | bouchées] [enroulées | volantes] [par QUI] · seal coupé [mouillé LONGUEUR] · seal',
    example: '/seamhand seal 12 m ruban évacuations ouvertes enroulées par Ana'
  },
  fire: {
    usage: 'fire [chaleur] [DURÉE h | min] [terminé] [par QUI] · fire',
    example: '/seamhand fire terminé par Ana'
  },
  detail: {
    usage: 'detail [angles] [tuyaux] [évacuations] [arrêts] [bords coupés] [décrochements] [tous] [mauvais] [sans tuyaux] · detail',
    example: '/seamhand detail angles évacuations'
  },
  punch: {
    usage: 'punch TEXTE… · punch N fait | ouvert · punch liste',
    example: '/seamhand punch bride desserrée à l’évacuation 2'
  },
  day: { usage: 'day [DATE | hier | aujourd’hui | demain] · day début · day relevé [DATE] · day csv [DATE]', example: '/day demain' },
  site: {
    usage:
      'site [NOM] [unités metric | us] [langue en | es | fr] [matin HH:MM] [soir HH:MM] [jours 1-6] [horaire HH:MM-HH:MM] [messages GENRES] [limites ID] [support GENRE] [canal CANAL] · site nouveau NOM à LAT,LON fuseau ZONE · site NOM fermé',
    example: '/site unités us matin 05:30'
  },
  start: {
    usage:
      'commencer · commencer NOM à LAT,LON fuseau Région/Ville [unités metric | us] [langue en | es | fr] [matin HH:MM] [soir HH:MM] [jours lun-sam] [horaire HH:MM-HH:MM] [messages GENRES | aucun] [limites ID] [support GENRE] [canal CANAL | aucun]',
    example: '/seamhand commencer nord à 50.1,8.2 fuseau Europe/Berlin langue fr horaire 06:00-16:00'
  },
  role: { usage: 'rôle · rôle PERSONNE [chef | équipe | inspecteur]', example: '/seamhand rôle @U0123ABCD chef' },
  help: { usage: 'help [COMMANDE | guide]', example: '/seamhand help spray' },
  me: { usage: 'me [langue en | es | fr] [unités metric | us] [résumé | sans résumé]', example: '/seamhand me langue fr unités metric' },
  undo: { usage: 'annuler [ID]', example: '/seamhand annuler north-12' },
  correct: { usage: 'corriger ID MOTS…', example: '/seamhand corriger north-12 air 21' }
}
