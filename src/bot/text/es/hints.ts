import type { HintWords } from '../hint-words.js'

export const hints: HintWords = {
  date: () => 'Escribir el día como 2026-12-31 (año-mes-día).',
  eitherDate: (said) => `¿Qué día es? Escribir ${said}.`,
  clock: () => 'Escribir las horas como 07:00; el horario como 07:00-17:00.',
  fahrenheit: (said) => `¿Fahrenheit? Escribir la unidad: ${said} F`,
  place: () =>
    'Escribir las coordenadas, primero la latitud: 41.9,-87.6 o 41.9 N, 87.6 O. Un mapa las muestra al mantener pulsado el lugar o con el botón derecho.',
  siteName: () => 'Nombres de obras: letras de la a a la z, cifras y guiones, sin espacios.',
  siteRoof: () => 'Una obra no guarda su techo: dar el contorno cada vez.',
  noEntries: () => 'Ese día no se anotó nada.'
}
