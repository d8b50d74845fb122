import type { InstallWords } from '../install-words.js'

export const install: InstallWords = {
  title: 'Seamhand para su espacio de trabajo',
  add: 'Añadir a Slack',
  done: 'Seamhand está instalado. Invítelo a un canal y prepare allí una obra: /seamhand empezar',
  failed: 'Seamhand no se instaló. Empiece de nuevo en /slack/install, en este navegador.'
}
