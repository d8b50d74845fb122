import type { HomeWords } from '../home-words.js'

export const home: HomeWords = {
  windowNow: (window) => `para rociar: ${window}, abierta ahora`,
  windowNext: (window) => `próxima ventana para rociar: ${window}`,
  noWindow: 'hoy ya no hay ventana para rociar',
  kitReady: 'listo ya',
  nextPost: (kind, at) => `próximo aviso: ${kind}, ${at}`,
  noChannel: 'sin avisos: la obra no tiene canal',
  askSite: 'Lo que no se ve aquí se pregunta en el canal de la obra.',
  numbered: {
    fixed: (number) => `Falla ${number}: reparada`,
    passed: (number) => `Falla ${number}: pasa`,
    punchDone: (number) => `Pendiente ${number}: hecho`
  }
}
