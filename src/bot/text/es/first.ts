import type { FirstWords } from '../first-words.js'

export const first: FirstWords = {
  glueNoMore: (substrates) => `no pegar más: cuadro de prueba sobre ${substrates} rechazado`,
  otherwise: (headline) => `aparte de eso: ${headline}`,
  noVoids: (welded) => `sin fallas anotadas; que se repasaron ${welded} no consta en el registro`,
  noWelds: 'sin fallas anotadas, y sin soldaduras: nada consta',
  stepsUnsaid: 'pasos de la reparación sin decir',
  passedWarm: 'pasada en caliente',
  sameVoid: (n) => `mismo lugar que la falla ${n}: deshacer si es la misma`,
  noCourse: (most) => `no hay tal hilera: como máximo ${most} en un techo de este tamaño`,
  beyondRoof: (side) => `fuera del techo: su lado más largo mide ${side}`,
  sameLaid: (at) => `lo mismo se anotó con hora ${at}: deshacer si es lo mismo`,
  noHeat: 'no consta calor',
  heat: 'cuentan como calor los metros, las probetas y las reparaciones; de otro calor decir fire calor con su hora: fire calor @14:30'
}
