import type { FactWords } from '../fact-words.js'

export const facts: FactWords = {
  notLogged: (list) => `Todavía sin anotar: ${list}`,
  write: 'Para anotarlo, enviar la línea que corresponda:',
  topics: {
    thunder: {
      name: 'truenos',
      say: [
        ['truenos o rayos', '/air trueno'],
        ['ninguno', '/air sin trueno']
      ]
    },
    rain: {
      name: 'lluvia',
      say: [
        ['está lloviendo', '/air lluvia'],
        ['ahora no llueve', '/air sin lluvia']
      ]
    },
    deck: {
      name: 'techo mojado o seco',
      say: [
        ['techo mojado', '/spray cubierta mojada'],
        ['techo seco', '/spray cubierta seca']
      ]
    },
    deckClean: {
      name: 'techo limpio o sucio',
      say: [
        ['techo sucio', '/spray cubierta sucia'],
        ['techo limpio', '/spray cubierta limpia']
      ]
    },
    fleece: {
      name: 'fieltro mojado o seco',
      say: [
        ['fieltro mojado', '/spray fieltro mojado'],
        ['fieltro seco', '/spray fieltro seco']
      ]
    },
    lap: {
      name: 'traslape mojado o seco',
      say: [
        ['traslape mojado', '/weld traslape mojado'],
        ['traslape seco', '/weld traslape seco']
      ]
    },
    lapClean: {
      name: 'traslape limpio o sucio',
      say: [
        ['traslape sucio', '/weld traslape sucio'],
        ['traslape limpio', '/weld traslape limpio']
      ]
    },
    power: {
      name: 'corte de corriente',
      say: [
        ['corte en el robot', '/weld robot corte'],
        ['en la pistola de aire caliente', '/weld mano corte']
      ]
    }
  }
}
