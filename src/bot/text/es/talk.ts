import { plural } from '../plural.js'
import type { TalkWords } from '../talk-words.js'

export const talk: TalkWords = {
  buttons: {
    undo: 'Deshacer', checklist: 'Declarar la lista', readings: 'Anotar lecturas', coupon: 'Nueva probeta', void: 'Anotar una falla', fixed: 'Reparada', passed: 'Repasada: pasa',
    failed: 'Repasada: rechazada', spray: '¿Podemos rociar ya?', list: 'Lista de fallas'
  },
  forms: { checklist: 'Antes de rociar', readings: 'Lecturas', coupon: 'Probeta de soldadura', void: 'Falla con el punzón' },
  send: 'Anotar', cancel: 'Cancelar',
  fields: {
    surfaces: 'Superficies y láminas', dry: 'Cubierta seca', fleeceDry: 'Fieltro seco', clean: 'Cubierta limpia', relaxed: 'Láminas desenrolladas y reposadas', noRain: 'No llueve ahora', noThunder: 'No se oyen truenos',
    kit: 'Juego', mixed: 'Las dos partes mezcladas', expiry: 'El juego caduca el', startUp: 'Puesta en marcha, en este orden', tight: 'Mangueras apretadas, sin fuga', purged: 'Las dos partes purgadas, chorros iguales',
    nozzle: 'Boquilla puesta', tested: 'Prueba de rociado buena', intakes: 'Tomas de aire, coches, gente a sotavento', intakesNone: 'Ninguna', intakesShut: 'Cerradas o tapadas', intakesOpen: 'Abiertas',
    contact: 'Lo que toca la lámina', compatible: 'Compatible o separado', touches: 'Betún, alquitrán o espuma: contacto', askMaker: 'Con dudas: consultar', weather: 'Tiempo',
    air: 'Aire', deck: 'Superficie de la cubierta', humidity: 'Humedad, %', wind: 'Viento medio', gust: 'Racha', rainChance: 'Probabilidad de lluvia, %', iso: 'Iso', resin: 'Resina',
    welder: 'Soldadora', robot: 'Robot', hand: 'Pistola de mano', widths: 'Anchos', peel: 'Al pelar', film: 'La película se separa de la malla', parted: 'Las caras se separan lisas', scorched: 'Quemado',
    glossy: 'Brillante', uneven: 'Desigual', wrinkled: 'Arrugado', warm: 'Enfriada', warmYes: 'Aún caliente', course: 'Hilera', on: 'Dónde', lap: 'Traslape lateral', end: 'Junta a tope', strip: 'Tira cubrejunta',
    patch: 'Parche', distance: 'Distancia en la hilera', length: 'Largo de la falla', cause: 'Causa vista', wet: 'Mojado', dirty: 'Sucio', cold: 'Soldadura fría'
  },
  working: 'En ello: aún no se ha anotado nada. La respuesta llega aquí.',
  failed: (ref) => `Algo ha fallado por nuestra parte. No se ha anotado nada. Dígalo otra vez; si sigue igual, dé esta referencia a su supervisor: ${ref}`,
  gone: 'Este botón ya no tiene nada que hacer aquí. Pregunte otra vez.',
  home: (sites) => plural('es', sites, { one: `${sites} obra`, other: `${sites} obras` }),
  noSites: 'Aquí no hay ninguna obra todavía.',
  howToBegin: 'Un supervisor la crea: site new NOMBRE at LAT,LON zone Región/Ciudad',
  openVoids: (count) => plural('es', count, { one: `${count} falla sin cerrar`, other: `${count} fallas sin cerrar` }),
  inventedSite: 'obra y tiempo inventados', askNow: 'ahora'
}
