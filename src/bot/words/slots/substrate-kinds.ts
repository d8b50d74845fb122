import type { Words } from '../forms.js'

/** What is sprayed, by the ids of the built-in limits sheets. */
export const substrateKinds = {
  board: { en: 'board(,s)', es: 'tablero(,s) panel', fr: 'panneau(,x)' },
  foil: { en: 'foil', es: 'aluminio', fr: 'aluminium alu' },
  concrete: { en: 'concrete', es: 'hormigón concreto', fr: 'béton' },
  steel: { en: 'steel', es: 'acero chapa', fr: 'acier tôle' },
  membrane: { en: 'membrane', es: 'membrana', fr: 'membrane' },
  plywood: { en: 'plywood', es: 'contrachapado', fr: 'contreplaqué' }
} as const satisfies Record<string, Words>
