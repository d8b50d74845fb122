import { convert as convertUnit, unitNames } from '../units.js'
import { formula, refuse } from './formula.js'

export const convert = formula({
  name: 'convert',
  inputs: {
    value: { kind: 'number', unit: '', min: -1e12, max: 1e12 },
    from: { kind: 'word', words: unitNames },
    to: { kind: 'word', words: unitNames }
  },
  source: 'NIST SP 811, exact factors; wire gauges ASTM B258, 0…40, to mm2 only',
  run({ value, from, to }) {
    if (from === 'AWG' && !(value >= 0 && value <= 40)) return refuse('out-of-range', 'value', 'AWG 0…40')
    const converted = convertUnit(value, from, to)
    return converted === null ? refuse('wrong-unit', to, `${from} does not convert to ${to}`) : { value: converted }
  }
})
