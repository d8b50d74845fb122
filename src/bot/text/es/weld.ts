import { counted } from '../plural.js'
import type { WeldWords } from '../weld-words.js'

export const weld: WeldWords = {
  metres: (cleared, onHold, released) => `soldado: ${cleared} habilitados, ${onHold} retenidos, ${released} liberados`,
  onHold: (metres) => `${metres} retenidos`,
  newOnHold: (metres) => `${metres} por este mensaje`,
  toRelease: 'para liberar: repasar todo con punzón, cortar hasta dos buenos, parchar los cortes',
  cuts: (good, needed) => `testigos buenos seguidos: ${good} de ${needed}`,
  probed: 'todo repasado',
  notProbed: 'sin repasar todavía',
  release: 'parchar los cortes y luego: soldar NOMBRE liberado',
  goodCut: 'testigo bueno',
  badCut: 'testigo malo',
  coupons: (count) => `de ${counted('es', count, { one: 'probeta', other: 'probetas' })}`,
  tooFew: (count, least) => `pocas probetas para la probabilidad de una angosta: ${count} de ${least}`,
  falling: 'los anchos bajan de probeta en probeta',
  low: 'los últimos anchos son más bajos de lo que da el azar',
  shortIn: (coupons) => `a este paso angosta en ${counted('es', coupons, { one: 'probeta', other: 'probetas' })}`,
  checkDrift: 'revisar boquilla, rodillo, traslape y tensión en la herramienta antes de que falle una',
  tool: (volts, heat) => `en la herramienta ${volts}, calor restante ${heat}`,
  generator: (watts) => `generador para esta herramienta: al menos ${watts} continuos`,
  section: (area, most) => `un cable de ${area} deja la caída en ${most} o menos`
}
