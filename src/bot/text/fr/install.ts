import type { InstallWords } from '../install-words.js'

export const install: InstallWords = {
  title: 'Seamhand pour votre espace de travail',
  add: 'Ajouter à Slack',
  done: 'Seamhand est installé. Invitez-le dans un canal et préparez-y un chantier : /seamhand commencer',
  failed: 'Seamhand n’a pas été installé. Recommencez à /slack/install, dans ce navigateur.'
}
