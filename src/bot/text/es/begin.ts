import type { BeginWords } from '../begin-words.js'

export const begin: BeginWords = {
  start: 'preparar una obra',
  made: (site) => `la obra ${site} está lista`,
  how: 'Basta una línea: empezar norte a 50.1,8.2 zona Europe/Berlin unidades metric',
  form: 'En el chat, /seamhand empezar abre un formulario.',
  firstPost: (kind, at) => `Primer aviso: ${kind}, ${at}`,
  noPost: 'Sin avisos: no tiene canal. Fijarlo desde el canal: obra canal CANAL',
  invite: 'Invitar al bot a su canal para que lleguen los avisos: /invite @Seamhand',
  afterwards: 'Después: día inicio antes de la primera pasada, ayuda guía para la cuadrilla, rol PERSONA supervisor para nombrar a otro supervisor.',
  role: (person, role) => `${person}: ${role}`,
  named: (person, role) => `${person}: ${role} desde ahora`,
  roles: { supervisor: 'supervisor', crew: 'cuadrilla', inspector: 'inspector' },
  supervisors: (list) => `Supervisores: ${list}`,
  known: (list) => `Escribir @ y elegir a la persona, o poner su id. Conocidos aquí: ${list}`,
  noSupervisor: 'Todavía no hay supervisor: lo será quien hable primero en el chat.',
  askOne: (list) => `Pedirlo a un supervisor: ${list}`,
  lastSupervisor: 'es el único supervisor: nombrar antes a otro'
}
