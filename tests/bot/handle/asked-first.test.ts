import { describe, expect, it } from 'vitest'
import { seamhands } from '../../support/seamhand.js'

const open = seamhands()

/** Of an answer without the spaces that do not break. */
function linesOf(text: string): readonly string[] {
  return text.replaceAll('\u00a0', ' ').split('\n')
}

describe('the line after the outcome answers what was asked', () => {
  it.each([
    ['en', 'is the roof dry yet?', '? roof: dry by the forecast, not stated: touch it, then state dry or wet'],
    ['es', '¿está seca la cubierta?', '? cubierta: seca según el pronóstico, sin declarar: tocarla y decir seco o mojado'],
    ['fr', 'le toit est sec ?', '? toit : sec d’après la prévision, pas déclaré : le toucher, puis dire sec ou mouillé'],
    ['en', 'will it rain today?', '✓ rain: none in the forecast · chance of rain up to 6 %'],
    ['es', '¿va a llover hoy?', '✓ lluvia: ninguna en el pronóstico · probabilidad de lluvia hasta 6 %'],
    ['fr', 'il va pleuvoir ?', '✓ pluie : aucune de prévue · risque de pluie jusqu’à 6 %'],
    ['en', 'any lightning around?', '✓ no thunder'],
    ['es', '¿hay rayos?', '✓ sin truenos'],
    ['fr', 'il y a des éclairs ?', '✓ pas de tonnerre'],
    ['en', 'any storms tomorrow?', '✓ thunder: none in the forecast'],
    ['en', 'is it too windy to lay?', '✓ mean wind 10 km/h (forecast), at most 37 km/h'],
    ['en', 'is it too hot for the guys?', '✓ heat index 15.5 °C (forecast), at most 39.4 °C']
  ] as const)('%s: %s', async (lang, text, line) => {
    const reply = await (await open({ weather: 'sample' })).ask(text, { at: '10:00', lang })
    expect(linesOf(reply.text)[1]).toBe(line)
    expect(linesOf(reply.text).filter((each) => each === line)).toHaveLength(1)
  })

  it('says what was stated of the deck, and of the rain, not what is reckoned', async () => {
    const seamhand = await open({ weather: 'sample' })
    await seamhand.ask('spray deck dry', { at: '09:50' })
    expect(linesOf((await seamhand.ask('is the roof dry yet?', { at: '10:00' })).text)[1]).toBe('✓ roof: stated dry')
    await seamhand.ask('spray rain deck wet', { at: '10:05' })
    expect(linesOf((await seamhand.ask('is the roof dry yet?', { at: '10:10' })).text)[1]).toMatch(/^✕ roof: wet/)
    expect(linesOf((await seamhand.ask('will it rain today?', { at: '10:10' })).text)[1]).toBe('✕ rain: falling now')
  })

  it('never calls dry, or free of rain and thunder, what nobody knows', async () => {
    const seamhand = await open({ weather: 'none' })
    const first = async (text: string) => linesOf((await seamhand.ask(text, { at: '10:00' })).text)[1]
    expect(await first('is the roof dry yet?')).toBe('? roof: not known whether dry: touch it, then state dry or wet')
    expect(await first('will it rain today?')).toBe('? rain: not known')
    expect(await first('any storms tomorrow?')).toBe('? thunder: not known')
    expect(await first('any lightning around?')).toBe('? thunder: not known → state thunder or no thunder')
  })

  it('leaves the words of a command as they are', async () => {
    const seamhand = await open({ weather: 'sample' })
    expect(linesOf((await seamhand.ask('day', { at: '10:00' })).text)[1]).toMatch(/^△ spray: /)
  })
})

describe('thunder that is spoken of beside work', () => {
  it.each([
    ['en', 'there is lightning, can we work?', ' — if there is no thunder', 'Lightning: off the roof', '/air thunder'],
    ['es', 'hay rayos, ¿podemos trabajar?', ' — si no hay truenos', 'Rayos: fuera de la cubierta', '/air trueno'],
    ['fr', 'il y a des éclairs, on peut travailler ?', ' — s’il n’y a pas de tonnerre', 'Foudre : quitter le toit', '/air tonnerre']
  ] as const)('%s: off the roof comes first, and the go hangs on it', async (lang, text, head, caution, write) => {
    const reply = await (await open({ weather: 'sample' })).ask(text, { at: '10:00', lang })
    const lines = linesOf(reply.text)
    expect(lines[0]?.endsWith(head)).toBe(true)
    expect(lines[1]?.startsWith(caution)).toBe(true)
    expect(lines[2]).toContain(write)
    expect(reply.logged).toEqual([])
  })

  it('needs no if where it is known', async () => {
    const seamhand = await open({ weather: 'sample' })
    await seamhand.ask('air thunder', { at: '09:55' })
    const lines = linesOf((await seamhand.ask('there is lightning, can we work?', { at: '10:00' })).text)
    expect([lines[0]?.startsWith('✕ NO-GO'), lines[0]?.includes(' — if')]).toEqual([true, false])
    expect(lines[1]).toMatch(/^Lightning: off the roof/)
  })
})
