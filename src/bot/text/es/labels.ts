import type { LabelId } from '../labels.js'

export const labels: Readonly<Record<LabelId, string>> = {
  air: 'aire', substrate: 'sustrato', deck: 'cubierta', sheet: 'lámina', rh: 'humedad', humidity: 'humedad', dew: 'punto de rocío', wind: 'viento', gust: 'racha', sun: 'sol',
  rain: 'lluvia', thunder: 'trueno', kit: 'juego', iso: 'iso', resin: 'resina', exp: 'caducidad', expiry: 'caducidad', dry: 'seco', wet: 'mojado', clean: 'limpio', dirty: 'sucio',
  fleece: 'fieltro', lap: 'traslape', compatible: 'compatible', contact: 'contacto', ask: 'consultar al fabricante', compatibility: 'compatibilidad', intakes: 'tomas de aire', none: 'ninguna', shut: 'cerrada', open: 'abierta',
  rolled: 'enrollado', unrolled: 'desenrollado', relaxed: 'reposado', start: 'inicio', mixed: 'mezclado', tight: 'apretado', purged: 'purgado', nozzle: 'boquilla', tested: 'probado', leak: 'fuga',
  moisture: 'prueba de humedad', thumb: 'prueba del pulgar', film: 'película', parted: 'separado', scorched: 'quemado', glossy: 'brillante', uneven: 'desigual', wrinkled: 'arrugado', peel: 'pelado',
  warm: 'caliente', restart: 'reinicio', power: 'corte', hand: 'mano', robot: 'robot', set: 'ajuste', speed: 'velocidad', thick: 'espesor', operator: 'operador', welder: 'soldadora',
  width: 'ancho', lead: 'cable', course: 'hilera', end: 'junta a tope', strip: 'tira', patch: 'parche', gap: 'hueco', off: 'descentrado', edge: 'borde', distance: 'distancia', length: 'largo',
  cause: 'causa', void: 'falla', fixed: 'reparado', passed: 'pasa', failed: 'rechazado', box: 'caja', store: 'almacén', lot: 'lote', used: 'usado', empty: 'vacío', area: 'superficie',
  sheets: 'láminas', roll: 'rollo', times: 'cuántas', reason: 'motivo', name: 'nombre', time: 'hora', date: 'fecha', site: 'obra', place: 'lugar', zone: 'zona', lang: 'idioma',
  units: 'unidades', posts: 'avisos', morning: 'mañana', evening: 'tarde', days: 'días', hours: 'horas', limits: 'hoja de límites', channel: 'canal', number: 'número', id: 'registro', command: 'comando'
}
