import { describe, expect, test } from 'vitest'
import { dataWords } from '../../../src/bot/papers/record/entry-words.js'
import { texts } from '../../../src/bot/text/index.js'

const spanish = (data: Parameters<typeof dataWords>[0]) => dataWords(data, { lang: 'es', units: 'metric', zone: 'UTC' }, texts.es.record)

describe('the data of an entry in words', () => {
  test('codes are put into the language, what people wrote is not', () => {
    expect(spanish({ peel: 'parted', colour: 'dark', lot: 'soft', by: 'open' })).toBe(
      `${texts.es.record.members.peel}: caras separadas · color: dark · lote: soft · por: open`
    )
    expect(spanish({ text: 'wet' })).toBe('texto: wet')
  })

  test('amounts have the unit that their name ends with; what is not known is left out', () => {
    expect(spanish({ airC: 20.5, rainFalling: false, course: 4, cause: null, causes: [] })).toBe('aire: 20,5\u00a0°C · llueve: no · hilera: 4')
  })
})
