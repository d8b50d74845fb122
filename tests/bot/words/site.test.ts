import { describe, expect, test } from 'vitest'
import { refused, said } from './reader.js'

describe('site', () => {
  test.each([
    ['site', { command: 'site show', name: null }],
    ['obra', { command: 'site show', name: null }],
    ['site Demo', { command: 'site show', name: 'demo' }],
    ['site 12-main', { command: 'site show', name: '12-main' }],
    ['site north closed', { command: 'site set', name: 'north', change: { closed: true } }],
    ['obra norte cerrada', { command: 'site set', name: 'norte', change: { closed: true } }],
    ['chantier nord ouvert', { command: 'site set', name: 'nord', change: { closed: false } }],
    ['site new North-1 at 50.123,-8.4 zone Europe/Berlin', { command: 'site new', name: 'north-1', lat: 50.123, lon: -8.4, zone: 'Europe/Berlin' }],
    [
      'obra nueva norte a 19.4, −99.1 zona America/Mexico_City',
      { command: 'site new', name: 'norte', lat: 19.4, lon: -99.1, zone: 'America/Mexico_City' }
    ],
    ['chantier nouveau nord fuseau Europe/Paris à 48.8 2.3', { command: 'site new', name: 'nord', lat: 48.8, lon: 2.3, zone: 'Europe/Paris' }]
  ])('%s', (text, says) => {
    expect(said(text)).toEqual(says)
  })

  test.each([
    ['units us', { units: 'us' }],
    ['unidades métricas', { units: 'metric' }],
    ['lang fr', { lang: 'fr' }],
    ['langue français', { lang: 'fr' }],
    ['posts evening,morning', { posts: ['evening', 'morning'] }],
    ['posts watch, wrap-up evening 17:30', { posts: ['watch', 'wrap-up'], evening: '17:30' }],
    ['posts off', { posts: [] }],
    ['avisos mañana,tarde', { posts: ['evening', 'morning'] }],
    ['messages matin', { posts: ['morning'] }],
    ['morning 5:30', { morning: '05:30' }],
    ['mañana 05:30 tarde 17:00', { morning: '05:30', evening: '17:00' }],
    ['matin 06:00 soir 18:00', { morning: '06:00', evening: '18:00' }],
    ['days mon-sat', { days: [1, 2, 3, 4, 5, 6] }],
    ['days 1-5', { days: [1, 2, 3, 4, 5] }],
    ['days mon, wed, fri', { days: [1, 3, 5] }],
    ['days sat-mon', { days: [1, 6, 7] }],
    ['días lun-vie', { days: [1, 2, 3, 4, 5] }],
    ['jours lundi,mer,dim', { days: [1, 3, 7] }],
    ['hours 06:00-18:00', { hours: '06:00-18:00' }],
    ['horario 7:00–15:30', { hours: '07:00-15:30' }],
    ['limits common-practice-us', { limits: 'common-practice-us' }],
    ['substrate concrete', { substrate: 'concrete' }],
    ['channel #Roof-1', { channel: '#roof-1' }],
    ['channel <#C0123ABC|roof>', { channel: 'C0123ABC' }],
    ['channel C0123ABC', { channel: 'C0123ABC' }],
    ['canal off', { channel: null }],
    ['zone America/New_York', { zone: 'America/New_York' }],
    ['at 50,8', { lat: 50, lon: 8 }],
    ['units: us, lang: es', { units: 'us', lang: 'es' }]
  ])('site demo %s', (text, change) => {
    expect(said(`site demo ${text}`)).toEqual({ command: 'site set', name: 'demo', change })
    expect(said(`site ${text}`)).toEqual({ command: 'site set', name: null, change })
  })

  test.each([
    ['site demo north', 'unknown-word'],
    ['site de_mo', 'unknown-word'],
    ['site demo colour red', 'unknown-word'],
    ['site units', 'missing'],
    ['site units lang fr', 'missing'],
    ['site units yards', 'unknown-word'],
    ['site units us units metric', 'duplicate'],
    ['site morning 25:00', 'bad-number'],
    ['site morning soon', 'unknown-word'],
    ['site hours 18:00-06:00', 'bad-number'],
    ['site hours 06:00', 'bad-number'],
    ['site days someday', 'unknown-word'],
    ['site days 0-9', 'unknown-word'],
    ['site zone Nowhere/City', 'unknown-word'],
    ['site zone +02:00', 'unknown-word'],
    ['site channel here', 'unknown-word'],
    ['site posts noon', 'unknown-word'],
    ['site at 91,0', 'out-of-range'],
    ['site at 0,181', 'out-of-range'],
    ['site at 50', 'bad-number'],
    ['site at', 'missing'],
    ['site closed', 'missing'],
    ['site demo closed open', 'inconsistent'],
    ['site new', 'missing'],
    ['site new north', 'missing'],
    ['site new north at 50,8', 'missing'],
    ['site new north zone Europe/Berlin', 'missing'],
    ['site new north at 50,8 zone Europe/Berlin closed', 'inconsistent']
  ])('%s: %s', (text, code) => {
    expect(refused(text).code).toBe(code)
  })
})
