import { describe, expect, it } from 'vitest'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('how far kits go', () => {
  it('by day and by lot, against the plan', async () => {
    const seamhand = await open()
    await seamhand.ask('kit K1 lot A used 80 m2 empty')
    await seamhand.ask('kit K2 lot B used 100 m2 empty')
    await seamhand.ask('kit K3 lot B used 30 m2')
    const numbers = numbersOf(await seamhand.ask('laid 10 m2 kit K3'))

    expect(numbers).toMatchObject({ yieldM2PerKit: 90, planM2PerKit: 90, driftPct: 0 })
    expect(numbers.yieldByLot).toEqual([
      { name: 'A', m2PerKit: 80, kits: 1, driftPct: -11.111111 },
      { name: 'B', m2PerKit: 100, kits: 1, driftPct: 11.111111 }
    ])
    expect(numbers.yieldByDay).toEqual([{ name: '2026-05-04', m2PerKit: 90, kits: 2, driftPct: 0 }])
  })

  it('an emptied kit counts by the day it was said to be empty first, and no more once that is undone', async () => {
    const seamhand = await open()
    await seamhand.ask('kit K1 used 80 m2 empty')
    await seamhand.ask('kit K1 empty')
    const { logged } = await seamhand.ask('kit K2 used 60 m2 empty')
    await seamhand.ask(`undo ${logged[0]}`)
    expect(numbersOf(await seamhand.ask('laid 10 m2 kit K9')).yieldByDay).toEqual([
      { name: '2026-05-04', m2PerKit: 80, kits: 1, driftPct: -11.111111 }
    ])
  })

  it('parts that empty unevenly are said first, in words', async () => {
    const seamhand = await open()
    const even = await seamhand.ask('kit K1 left 20 15 %')
    expect(even.text).not.toContain('off ratio')
    expect(even.text).toContain('left: iso 20 %, resin 15 %')

    const uneven = await seamhand.ask('kit K1 left resin 12 iso 20')
    expect(numbersOf(uneven).kits).toMatchObject([{ name: 'K1', isoLeftPct: 20, resinLeftPct: 12, offRatio: true }])
    expect(uneven.text).toContain('K1 empties unevenly (iso 20 %, resin 12 % left): off ratio')
  })
})

describe('what was said of a kit and what was laid with it', () => {
  it('tell of the same area: the larger counts, not both', async () => {
    const seamhand = await open()
    await seamhand.askAll(['laid 48 m2 kit K7', 'laid 48 m2 kit K7', 'kit K7 used 96 m2 empty', 'laid 96 m2 kit K8', 'kit K8 empty'])
    const numbers = numbersOf(await seamhand.ask('laid 10 m2 kit K9'))
    expect(numbers).toMatchObject({ yieldM2PerKit: 96, kitAssumed: false, kitEmptiedAt: null })
    expect(numbersOf(await seamhand.ask('kit K7')).kits).toMatchObject([{ name: 'K7', usedM2: 96 }, { usedM2: 96 }, { usedM2: 10 }])
    await seamhand.ask('kit K7 used 14 m2')
    expect(numbersOf(await seamhand.ask('kit K7')).kits).toMatchObject([{ name: 'K7', usedM2: 110 }, {}, {}])
  })

  it.each([
    ['en', 'more per kit than planned: too thin', 'less per kit than planned: too thick'],
    ['es', 'más por juego de lo previsto: capa fina', 'menos por juego de lo previsto: capa gruesa'],
    ['fr', 'de plus par trousse que prévu : couche mince', 'de moins par trousse que prévu : couche épaisse']
  ] as const)('say in %s whether the foam was too thin or too thick', async (lang, thin, thick) => {
    const off = async (area: number) => {
      const seamhand = await open()
      await seamhand.ask(`kit K1 used ${area} m2 empty`)
      return (await seamhand.ask('laid 10 m2 kit K2', { lang })).text.replaceAll('\u00a0', ' ')
    }
    const [more, less] = [await off(148), await off(45)]
    expect(more).toMatch(/64[.,]4\s%/)
    expect(more).toContain(thin)
    expect(less).toMatch(/[^−-]50\s%/)
    expect(less).toContain(thick)
  })

  it.each([
    ['en', 'kit K7 (the one in use: none was named)', 'kit K7 was said to be empty at 10:00'],
    ['es', 'juego K7 (el que está en uso: no se nombró ninguno)', 'el juego K7 se declaró vacío a las 10:00'],
    ['fr', 'trousse K7 (celle en service : aucune n’a été nommée)', 'la trousse K7 était déclarée vide à 10:00']
  ] as const)('say in %s whose the area is, and that the kit was empty', async (lang, assumed, empty) => {
    const seamhand = await open()
    const said = async (text: string) => (await seamhand.ask(text, { lang })).text.replaceAll('\u00a0', ' ')
    await seamhand.ask('kit K7 mixed')
    expect(await said('laid 20 m2')).toContain(assumed)
    expect(await said('laid 20 m2 kit K7')).not.toContain('K7')
    await seamhand.ask('kit K7 empty')
    expect(await said('laid 20 m2 kit K7')).toContain(empty)
  })
})

describe('a kit that is empty', () => {
  it.each([
    ['en', 'Kit K8: empty', 'laid with it: 50 m²', 'next kit'],
    ['es', 'Juego K8: vacío', 'colocado con él: 50 m²', 'juego siguiente'],
    ['fr', 'Trousse K8 : vide', 'posé avec : 50 m²', 'trousse suivante']
  ] as const)('is said to be in %s, neither go nor to be read, the next morning too', async (lang, head, used, next) => {
    const seamhand = await open({ weather: 'none' })
    await seamhand.ask('kit K8 iso 25 resin 25 mixed exp 2099-01-01')
    const texts = [await seamhand.ask('kit K8 used 50 m2 empty', { lang }), await seamhand.ask('kit', { lang, at: '2026-05-05T06:00:00Z' })]
    for (const { text } of texts) {
      const lines = text.replaceAll('\u00a0', ' ').split('\n')
      expect(lines.slice(0, 3)).toEqual([head, used, expect.stringContaining(next)])
      expect(text).not.toMatch(/GO:|take a reading/)
    }
  })

  it('and where none was ever named, none is shown as one', async () => {
    const { text } = await (await open({ weather: 'none' })).ask('kit')
    expect(text).not.toContain('K1\n')
    expect(text.split('\n')[0]).not.toContain('K1')
  })
})
