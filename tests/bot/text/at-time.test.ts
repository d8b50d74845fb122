import { describe, expect, it } from 'vitest'
import { texts } from '../../../src/bot/text/index.js'
import { clock } from '../../../src/bot/views/clock.js'
import { metric, morning } from '../../support/answers.js'

const tomorrow = (lang: 'en' | 'es' | 'fr') => clock(morning + 86_400, morning, { ...metric, lang })

// Articles with hours and dated days: the grammar of either language, from memory.
describe('a time of another day in a line', () => {
  it('has the article of the day in Spanish, that of the hour today', () => {
    const { alerts, kit, day, closing } = texts.es
    const at = tomorrow('es')

    expect([alerts.until('08:10'), alerts.until(at)]).toEqual(['hasta las 08:10', 'hasta el mar 5 may a las 08:10'])
    expect(alerts.until('01:30')).toBe('hasta la 01:30')
    expect([kit.startBy('08:10'), kit.startBy(at)]).toEqual([
      'a la caja caliente antes de las 08:10',
      'a la caja caliente antes del mar 5 may a las 08:10'
    ])
    expect(day.dry(at)).toBe('cubierta seca hacia el mar 5 may a las 08:10')
    expect([closing.fire.unsigned('08:10'), closing.fire.unsigned(at)].map((line) => line.split(':').slice(0, 2).join(':'))).toEqual([
      'se cumplió a las 08:10',
      'se cumplió el mar 5 may a las 08:10'
    ])
  })

  it('has the article of the day in French', () => {
    const { alerts, kit, closing } = texts.fr
    const at = tomorrow('fr')

    expect([alerts.until('08:10'), alerts.until(at)]).toEqual(['jusqu’à 08:10', 'jusqu’au mar. 5 mai à 08:10'])
    expect(kit.ready(at)).toBe('prête vers le mar. 5 mai à 08:10')
    expect([closing.mend.dated('08:10'), closing.mend.dated(at)]).toEqual(['daté de 08:10', 'daté du mar. 5 mai à 08:10'])
    expect(closing.fire.unsigned(at)).toContain('écoulée le mar. 5 mai à 08:10')
  })

  it.each(['es', 'fr'] as const)('%s: never two articles, whatever the line', (lang) => {
    const at = tomorrow(lang)
    const { alerts, kit, day, closing, posts, decision, warming } = texts[lang]
    const lines = [
      alerts.until(at),
      alerts.notKnownSince(at),
      kit.ready(at),
      kit.cold(at),
      kit.startBy(at),
      day.lastSheet(at, at),
      day.noMore(at, at),
      day.dry(at),
      day.firstSpray(at),
      day.dew(at),
      closing.mend.waitUntil(at),
      closing.mend.probedWarm(at),
      closing.fire.running(at, '1 h'),
      closing.fire.unsigned(at),
      posts.around(at),
      posts.still.fireUntil(at),
      decision.changes(at),
      warming.likely(at, at)
    ]
    for (const line of lines) {
      expect(line).toMatch(lang === 'es' ? /(el|del) mar 5 may a las 08:10/ : /(le|au|du) mar\. 5 mai à 08:10/)
      expect(line).not.toMatch(/las mar|\bde el |à le |\bde le |\ba el |à mar/)
    }
  })
})
