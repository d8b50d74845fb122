import type { BeginWords } from '../begin-words.js'

export const begin: BeginWords = {
  start: 'préparer un chantier',
  made: (site) => `le chantier ${site} est prêt`,
  how: 'Une ligne suffit : commencer nord à 50.1,8.2 fuseau Europe/Berlin unités metric',
  form: 'Dans le chat, /seamhand commencer ouvre un formulaire.',
  firstPost: (kind, at) => `Premier message : ${kind}, ${at}`,
  noPost: 'Pas de messages : il n’a pas de canal. Le choisir depuis le canal : chantier canal CANAL',
  invite: 'Inviter le bot dans son canal pour que les messages arrivent : /invite @Seamhand',
  afterwards: 'Ensuite : jour début avant la première passe, aide guide pour l’équipe, rôle PERSONNE chef pour nommer un autre chef de chantier.',
  role: (person, role) => `${person} : ${role}`,
  named: (person, role) => `${person} : ${role} à partir de maintenant`,
  roles: { supervisor: 'chef de chantier', crew: 'équipe', inspector: 'inspecteur' },
  supervisors: (list) => `Chefs de chantier : ${list}`,
  known: (list) => `Taper @ et choisir la personne, ou écrire son id. Connus ici : ${list}`,
  noSupervisor: 'Pas encore de chef de chantier : ce sera le premier qui parle dans le chat.',
  askOne: (list) => `Demander à un chef de chantier : ${list}`,
  lastSupervisor: 'c’est le seul chef de chantier : d’abord en nommer un autre'
}
