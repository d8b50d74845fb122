import { describe, expect, it } from 'vitest'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('/sheets', () => {
  it('counts what a rectangle takes, every number of outside contract §6', async () => {
    const reply = await (await open()).ask('/sheets 24x36 m along x')

    // By hand: ceil((36 − 0.08)/(2 − 0.08)) = 19 courses; 19 × 24 m ÷ 20 m = 22.8, so 23 rolls; 18 laps of 24 m; one joint a course.
    // Strips: 17 of 2000 + 150 mm, one of 2000 + 75 at the low edge, one of 36 000 − 18 × 1920 + 75 = 1515 at the high edge.
    expect(numbersOf(reply)).toMatchObject({ areaM2: 864, courses: 19, rolls: 23, endJoints: 19, strips: 19, patches: 0, sideLapM: 432 })
    const { stripMm, robotWeldM, handWeldM, wastePct } = numbersOf(reply) as Record<string, number>
    expect(stripMm).toBeCloseTo(17 * 2150 + 2075 + 1515, 3)
    expect(robotWeldM).toBeCloseTo(432 + (2 * (17 * 2150 + 2075 + 1515 - 19 * 50)) / 1000, 6)
    expect(handWeldM).toBeCloseTo((19 * (2 * 150 + 4 * 25 - (8 - 2 * Math.PI) * 25)) / 1000, 6)
    // Laid: the roof, the laps, less 19 gaps of 6 mm (twice in a lap: 17 courses of 2 m, the ends 2 and 1.44 m).
    const laidMm2 = 864e6 + 432e3 * 80 - 6 * (18 * 2000 + 1440)
    expect(wastePct).toBeCloseTo(100 * (1 - laidMm2 / (23 * 20_000 * 2000)), 6)
    expect(numbersOf(reply)).toMatchObject({ zones: null, kits: expect.any(Number), nozzles: expect.any(Number), fasteners: expect.any(Number) })
    expect(reply).toMatchObject({ ok: true, outcome: null, logged: [], decision: null })
  })

  it('takes the site’s roof where no outline is said, and its height for the zones', async () => {
    const seamhand = await open()
    const [own, said] = [await seamhand.ask('/sheets zones en'), await seamhand.ask('/sheets 24x36 m height 8 zones en')]

    expect(own.numbers).toEqual(said.numbers)
    const zones = numbersOf(own).zones as Record<string, number>
    expect(Object.values(zones).reduce((sum, m2) => sum + m2, 0)).toBeCloseTo(864, 6)
  })

  it('leaves the zones of an L to the engineer, and says so in three languages', async () => {
    const seamhand = await open()
    for (const [lang, word] of [
      ['en', 'engineer'],
      ['es', 'ingeniero'],
      ['fr', 'ingénieur']
    ] as const) {
      const reply = await seamhand.ask('/sheets 24x36 m notch 6x8 ne zones nbcc', { lang })
      expect(numbersOf(reply)).toMatchObject({ zones: null, zonesBy: { standard: 'nbcc', why: 'shape' }, areaM2: 816 })
      expect(reply.text).toContain(word)
    }
  })

  it.each([
    ['/sheets 0,0 10,0 0,10 10,10', 'inconsistent', '10,10', 'cross'],
    ['/sheets 24x36 opening 2x1.2 at 30,9', 'inconsistent', 'opening 2x1.2 at 30,9', 'outside the roof'],
    ['/sheets 24x36 opening 2x1.2 at 22,9', 'inconsistent', 'opening 2x1.2 at 22,9', 'touches the edge'],
    ['/sheets 24x36 opening 2x2 at 5,9 opening 2x2 at 6,10', 'inconsistent', 'opening 2x2 at 6,10', 'openings touch'],
    ['/sheets 24x36 opening 4x4 at 5,9 opening 1x1 at 6,10', 'inconsistent', 'opening 1x1 at 6,10', 'another opening'],
    ['/sheets 0,0 10,0', 'inconsistent', '0,0', 'three corners'],
    ['/sheets 0,0 10,0 10,0 0,10', 'inconsistent', '10,0', 'shorter than 10 mm'],
    ['/sheets 1.5x36 along y', 'inconsistent', '1.5x36', 'wider than the roof'],
    ['/sheets 24x36 lap 1.2 m', 'inconsistent', null, 'less than half'],
    ['/sheets 24x36 sheet 0.5 lap 600 mm', 'inconsistent', null, 'less than half'],
    ['/sheets 24x36 roll 0.5', 'inconsistent', null, '1 m long'],
    ['/sheets 900x900', 'out-of-range', '900x900', 'too large'],
    ['/sheets 300x300 sheet 0.02 lap 0', 'out-of-range', '300x300', 'too large']
  ])('%s: %s at %s', async (text, code, word, says) => {
    const reply = await (await open()).ask(text)

    expect(reply.error).toMatchObject({ code, word })
    expect(reply.error?.message).toContain(says)
    expect(reply).toMatchObject({ ok: false, logged: [], outcome: null })
  })

  it('lists the cuts of each roll, the patches and the places to press', async () => {
    const reply = await (await open()).ask('/sheets 24x36 m along x')
    const { cutList, handPressAt } = numbersOf(reply) as { cutList: { cutsMm: number[]; leftMm: number }[]; handPressAt: object[] }

    for (const { cutsMm, leftMm } of cutList) expect(cutsMm.reduce((sum, mm) => sum + mm, leftMm)).toBeCloseTo(20_000, 6)
    // Each strip steps with two edges over each of two lap edges; at the low and high course there is one.
    expect(handPressAt).toHaveLength(17 * 4 + 2 * 2)
    expect(JSON.stringify(reply.blocks)).toContain('rolls, cut in this order')
  })

  it('goes out as picture, SVG, document and table, with open voids and what is still to be laid', async () => {
    const seamhand = await open()
    await seamhand.ask('/laid 432 m2')
    await seamhand.ask('/probe course 4 lap 12 m 40 mm')
    const reply = await seamhand.ask('/sheets along x zones en')

    expect(reply.files.map((file) => (file as { kind: string }).kind)).toEqual(['roof', 'roof-svg', 'record', 'table'])
    expect(JSON.stringify(reply.files)).toContain('Void 1 at 12 m, 5.76 m')
    const { takeoff, remaining, laidM2 } = numbersOf(reply) as {
      takeoff: { item: string; value: number }[]
      remaining: typeof takeoff
      laidM2: number
    }
    const of = (list: typeof takeoff, item: string) => list.find((line) => line.item === item)?.value
    expect(laidM2).toBe(432)
    expect(of(remaining, 'rolls')).toBe(Math.ceil((of(takeoff, 'rolls') ?? 0) / 2))
    expect(JSON.stringify(reply.blocks)).toContain('still to be laid')
    const other = await seamhand.ask('/sheets 10x10 m')
    expect(JSON.stringify(other.files)).not.toContain('Void')
    expect(numbersOf(other).laidM2).toBe(0)
  })

  it.each([
    ['en', 'metric'],
    ['es', 'us'],
    ['fr', 'metric']
  ] as const)('says every line of the takeoff with its sum, in %s, %s', async (lang, units) => {
    const said = JSON.stringify((await (await open()).ask('/sheets 24x36 m zones asce height 8 m', { lang, units })).blocks)
    for (const word of ['÷', '×', '+ 5', ' %']) expect(said.replace(/\u00a0/g, ' ')).toContain(word)
    expect(said).not.toMatch(/undefined|NaN|\[object/)
  })
})
