import { describe, expect, it } from 'vitest'
import { findingOf, findingsOf, fullSpray, fullSprayParts, numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('the worked examples of outside contract §6', () => {
  it('/strip 2 m gap 6: 2150 long, 72 of land, 4557.079633 round with corners of 25', async () => {
    const reply = await (await open()).ask('/strip 2 m gap 6')

    // 1·2000 + 150; (150 − 6)/2; 2(2150 + 150) − (8 − 2π)·25, by the formulas of outside contract §6.
    expect(numbersOf(reply)).toMatchObject({ lengthMm: 2150, widthMm: 150, landMm: 72, weldPerimeterMm: 4557.079633, cornerRadiusMm: 25 })
    expect(reply.outcome).toBe('go')
  })

  it('/weld robot 41 mm film: passed, cleared', async () => {
    const reply = await (await open()).ask('/weld robot 41 mm film')

    expect(numbersOf(reply)).toMatchObject({ passed: true, cleared: true, lapsedBy: null, widthMm: 41, minWidthMm: 38, cause: null })
    expect(reply.outcome).toBe('go')
  })

  it('/probe course 4 end 3.2 m 40 mm: void 1, on end, 3.2 m along, 40 mm long', async () => {
    const seamhand = await open()
    const reply = await seamhand.ask('/probe course 4 end 3.2 m 40 mm')

    expect(numbersOf(reply)).toMatchObject({ void: 1, on: 'end', distanceM: 3.2, lengthMm: 40, state: 'open', course: 4 })
    expect(reply.outcome).toBe('no-go')
    expect((await seamhand.entries())[0]).toMatchObject({
      type: 'void',
      subject: 'void:1',
      data: { course: 4, on: 'end', distanceM: 3.2, lengthMm: 40 }
    })
  })

  it('the full spray line is go, in conditions, checklist and people, without a forecast and by day', async () => {
    const reply = await (await open()).ask(fullSpray)

    expect(reply).toMatchObject({
      ok: true,
      command: 'spray',
      outcome: 'go',
      outcomes: { conditions: 'go', checklist: 'go', people: 'go' },
      activities: { spray: 'go', lay: null, weld: null, people: 'go' },
      binding: null,
      weather: null,
      error: null
    })
    expect(new Set(findingsOf(reply).map(({ outcome }) => outcome))).toEqual(new Set(['go']))
    expect(findingsOf(reply).every(({ fix }) => fix === null)).toBe(true)
  })

  it('the same line at night is no-go for want of daylight alone', async () => {
    const reply = await (await open()).ask(fullSpray, { at: '23:30' })

    expect(reply.outcome).toBe('no-go')
    expect(reply.binding).toBe('daylight')
    expect(findingsOf(reply).filter(({ outcome }) => outcome !== 'go')).toHaveLength(1)
  })
})

type Part = (typeof fullSprayParts)[number]
type Lost = readonly [part: Part, rules: readonly string[], groups: readonly ('conditions' | 'checklist' | 'people')[], fixes: readonly string[]]

/** What each statement decides: without it these findings, and no others, are unknown. */
const lost: readonly Lost[] = [
  ['air 20', ['air-temperature', 'dew-margin', 'heat', 'cold'], ['conditions', 'people'], ['read:air']],
  ['deck 20', ['substrate-temperature', 'dew-margin'], ['conditions'], ['read:substrate']],
  ['rh 50', ['humidity', 'dew-margin', 'heat'], ['conditions', 'people'], ['read:humidity']],
  ['wind 10', ['wind-mean'], ['conditions', 'people'], ['read:wind']],
  ['gust 15', ['wind-gust'], ['conditions', 'people'], ['read:gust']],
  ['rain 10 %', ['rain-now', 'rain-coming'], ['conditions'], ['state:rain', 'state:chance']],
  ['no thunder', ['thunder'], ['people'], ['state:thunder']],
  ['kit 25', ['kit-temperature'], ['conditions'], ['read:kit']],
  ['dry', ['substrate-dry', 'fleece-dry'], ['checklist'], ['state:dry']],
  ['clean', ['substrate-clean'], ['checklist'], ['state:clean']],
  ['compatible', ['compatibility'], ['checklist'], ['state:compatibility']],
  ['intakes none', ['intakes'], ['checklist'], ['state:intakes']],
  ['relaxed', ['sheet-relaxed'], ['checklist'], ['state:unrolled']],
  ['tight', ['start-up'], ['checklist'], ['state:tight']],
  ['purged', ['start-up'], ['checklist'], ['state:purged']],
  ['nozzle', ['start-up'], ['checklist'], ['state:nozzle']],
  ['tested', ['start-up'], ['checklist'], ['state:tested']],
  ['exp 2099-01-01', ['adhesive-date'], ['checklist'], ['state:expiry']],
  // The temperature of a kit that was not mixed says nothing of its mean.
  ['mixed', ['kit-mixed', 'kit-temperature'], ['checklist', 'conditions'], ['state:mixed', 'mix:kit']]
]

describe('the full spray line without one of its statements', () => {
  it('has a row for each statement', () => {
    expect(lost.map(([part]) => part).sort()).toEqual([...fullSprayParts].sort())
  })

  it.each(lost)('%s: unknown, and it is named', async (part, rules, groups, fixes) => {
    const reply = await (await open()).ask(`/spray ${fullSprayParts.filter((each) => each !== part).join(' ')}`)

    const left = findingsOf(reply).filter(({ outcome }) => outcome !== 'go')
    expect([...new Set(left.map(({ rule }) => rule))].sort()).toEqual([...rules].sort())
    expect(new Set(left.map(({ outcome }) => outcome))).toEqual(new Set(['unknown']))
    for (const group of ['conditions', 'checklist', 'people'] as const) {
      expect(reply.outcomes?.[group], group).toBe(groups.includes(group) ? 'unknown' : 'go')
    }
    // People unknown is shown beside the activity and is not its own outcome.
    expect(reply.activities.spray).toBe(groups.some((group) => group !== 'people') ? 'unknown' : 'go')
    expect(reply.outcome).toBe(reply.activities.spray)
    expect(reply.activities.people).toBe(reply.outcomes?.people)
    expect(rules).toContain(reply.binding)
    expect(left.map(({ fix }) => fix)).toEqual(expect.arrayContaining([...fixes]))
    expect(left.every(({ value }) => value === null)).toBe(true)
  })

  it('without thunder the spray is go and the people are unknown: shown beside it, binding', async () => {
    const reply = await (await open()).ask(fullSpray.replace(' no thunder', ''))

    expect(reply).toMatchObject({
      outcome: 'go',
      binding: 'thunder',
      outcomes: { people: 'unknown' },
      activities: { spray: 'go', people: 'unknown' }
    })
    expect(findingOf(reply, 'thunder')).toMatchObject({ group: 'people', activity: 'people', value: null, fix: 'state:thunder', stale: false })
  })
})

describe('the picture of a strip', () => {
  it('in a terminal only when it is asked for, in any language', async () => {
    const seamhand = await open()
    expect((await seamhand.ask('strip 2 m gap 6')).files).toEqual([])
    for (const words of ['strip 2 m gap 6 picture', 'strip 2 m dibujo', 'strip 2 m dessin']) {
      expect((await seamhand.ask(words)).files).toMatchObject([{ kind: 'strip', name: 'strip.png' }])
    }
  })
})
