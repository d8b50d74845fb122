import type { Usages } from '../usages.js'

export const usages: Usages = {
  spray: {
    usage:
      'spray [aire T] [cubierta T] [hr N] [viento V] [racha V] [lluvia | lluvia N % | sin lluvia] [sin trueno] [juego T] [seco] [limpio] [mezclado] [reposado] [apretado purgado boquilla probado] · spray forzar MOTIVO',
    example: '/spray aire 20 cubierta 18 hr 60 viento 10 racha 18 lluvia 10 % seco limpio'
  },
  air: { usage: 'air [aire T] [hr N] [viento V] [racha V] [lluvia N %] [trueno | sin trueno]', example: '/air viento 18 racha 30 sin trueno' },
  weld: {
    usage:
      'weld [lámina T] [traslape limpio] [seco] [cable L SECCIÓN] · weld NOMBRE ANCHO… PELADO [testigo] [caliente] [ajuste T] [velocidad V] [espesor MM] [lote L] [color C] [por QUIÉN] · weld NOMBRE reinicio | corte | fuente | cable | ajuste T | velocidad V | boquilla | rodillo | operador QUIÉN | espesor MM | lote L | color C | vieja | apagado | repasado | liberado [L] | gráfico',
    example: '/weld robot 41 40 42 mm película ajuste 480 velocidad 2,5'
  },
  strip: { usage: 'strip ANCHO [hueco H] [descentrado D] [borde L] [láminas N] [rollo L] [xN] [dibujo]', example: '/strip 2 m hueco 6 mm' },
  sheets: {
    usage:
      'sheets ANCHOxFONDO [muesca AxF ne | se | so | no] [abertura AxF a X,Y] | X,Y X,Y X,Y… [abertura …] · con [sentido x | y] [altura H] [zonas en | asce | nbcc] [lámina A] [traslape T] [rollo L]',
    example: '/sheets 24x36 m abertura 2x1,2 a 5,9'
  },
  probe: {
    usage:
      'probe hilera N [traslape | junta | tira | parche] [DISTANCIA m] LARGO [CAUSA…] [enfriada] · probe N reparado [levantada limpiada secada recalentada enfriada] [parche] | pasa | rechazado · probe lista',
    example: '/probe hilera 4 junta 3,2 m 40 mm mojado'
  },
  kit: {
    usage:
      'kit · kit NOMBRE [iso T] [resina T] [T] [caja | almacén | cubierta [T]] [mezclado] [caduca FECHA] [lote L] [usado ÁREA] [queda N N %] [vacío]',
    example: '/kit K7 iso 24 resina 23 mezclado caja 28'
  },
  foam: { usage: 'foam [SEGUNDOS s] [parejo | vetas | oscuro | quebradizo | blando | pegajoso | plano]', example: '/foam 45 s parejo' },
  laid: {
    usage: 'laid ÁREA [láminas N] [hilera N] [juego NOMBRE] [robot LARGO] [mano LARGO] [NOMBRE LARGO]',
    example: '/laid 42 m2 láminas 2 hilera 4 juego K7 robot 20 mano 4'
  },
  bond: {
    usage: 'bond [SOPORTE] [FUERZA N | lbf] [espuma | fieltro | revestimiento | limpia] [exigido FUERZA] [cuadro LADO] [fresco] · bond',
    example: '/seamhand bond tablero 900 N espuma'
  },
  seal: {
    usage:
      'seal [LARGO [cinta | espuma | masilla | soldado | lastrado] | ninguno] [desagües abiertos | tapados] [enrolladas | sueltas] [por QUIÉN] · seal cortado [mojado LARGO] · seal',
    example: '/seamhand seal 12 m cinta desagües abiertos enrolladas por Ana'
  },
  fire: {
    usage: 'fire [calor] [TIEMPO h | min] [terminado] [por QUIÉN] · fire',
    example: '/seamhand fire terminado por Ana'
  },
  detail: {
    usage: 'detail [esquinas] [tubos] [desagües] [remates] [bordes cortados] [escalones] [todos] [rechazado] [sin tubos] · detail',
    example: '/seamhand detail esquinas desagües'
  },
  punch: {
    usage: 'punch TEXTO… · punch N hecho | abierto · punch lista',
    example: '/seamhand punch brida floja en el desagüe 2'
  },
  day: { usage: 'day [FECHA | ayer | hoy | mañana] · day inicio · day registro [FECHA] · day csv [FECHA]', example: '/day mañana' },
  site: {
    usage:
      'site [NOMBRE] [unidades metric | us] [idioma en | es | fr] [mañana HH:MM] [tarde HH:MM] [días 1-6] [horario HH:MM-HH:MM] [avisos CLASES] [límites ID] [sustrato CLASE] [canal CANAL] · site nuevo NOMBRE a LAT,LON zona ZONA · site NOMBRE cerrado',
    example: '/site unidades us mañana 05:30'
  },
  start: {
    usage:
      'empezar · empezar NOMBRE a LAT,LON zona Región/Ciudad [unidades metric | us] [idioma en | es | fr] [mañana HH:MM] [tarde HH:MM] [días lun-sáb] [horario HH:MM-HH:MM] [avisos CLASES | no] [límites ID] [sustrato CLASE] [canal CANAL | no]',
    example: '/seamhand empezar norte a 50.1,8.2 zona Europe/Berlin idioma es horario 06:00-16:00'
  },
  role: { usage: 'rol · rol PERSONA [supervisor | cuadrilla | inspector]', example: '/seamhand rol @U0123ABCD supervisor' },
  help: { usage: 'help [COMANDO | guía]', example: '/seamhand help spray' },
  me: { usage: 'me [idioma en | es | fr] [unidades metric | us] [resumen | sin resumen]', example: '/seamhand me idioma es unidades metric' },
  undo: { usage: 'deshacer [ID]', example: '/seamhand deshacer north-12' },
  correct: { usage: 'corregir ID PALABRAS…', example: '/seamhand corregir north-12 aire 21' }
}
