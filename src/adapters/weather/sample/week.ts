// INVENTED. No weather was ever like this at any place: a week made up for the demo site, in the manner of late spring in
// central Europe, so that each day shows another answer of the bot. It says nothing about any real roof.

/** Values at 0, 6, 12 and 18 o'clock local time, straight lines between them and on to the next day's first. */
export type Quarters = readonly [number, number, number, number]

export interface RainSpell {
  /** Whole local hours: the hours from `from` until `to`. */
  readonly from: number
  readonly to: number
  readonly mmPerHour: number
  readonly chancePct: number
  readonly thunder: boolean
}

export interface SampleDay {
  readonly story: string
  /** Reached at 05:00 and 15:00 local time. */
  readonly minC: number
  readonly maxC: number
  readonly dewPointC: Quarters
  readonly windKmh: Quarters
  /** Gust over mean wind. */
  readonly gustFactor: number
  readonly cloudPct: Quarters
  /** Chance of rain outside the spells. */
  readonly chancePct: number
  readonly spells: readonly RainSpell[]
}

const dry = { thunder: false, mmPerHour: 0 } as const
const wet = { thunder: false, chancePct: 85 } as const

/** Monday to Sunday. */
export const week: readonly SampleDay[] = [
  {
    story: 'go: dry, mild, light wind, and a breeze in the night that keeps the dew off',
    minC: 11,
    maxC: 21,
    dewPointC: [6, 5, 6, 7],
    windKmh: [8, 8, 11, 8],
    gustFactor: 1.5,
    cloudPct: [50, 45, 40, 30],
    chancePct: 3,
    spells: []
  },
  {
    story: 'dewy morning: a clear, still, humid night, so the roof is wet until the sun has dried it',
    minC: 9,
    maxC: 25,
    dewPointC: [9, 8.5, 11, 12],
    windKmh: [3, 2, 7, 5],
    gustFactor: 1.6,
    cloudPct: [5, 5, 15, 10],
    chancePct: 2,
    spells: []
  },
  {
    story: 'hot with thunder: heat for the crew by noon, storms from the middle of the afternoon',
    minC: 16,
    maxC: 32,
    dewPointC: [13, 15, 17, 19],
    windKmh: [5, 4, 9, 14],
    gustFactor: 1.8,
    cloudPct: [10, 15, 35, 85],
    chancePct: 10,
    spells: [
      { ...dry, from: 14, to: 15, chancePct: 35 },
      { from: 15, to: 18, mmPerHour: 4.5, chancePct: 70, thunder: true },
      { from: 18, to: 20, mmPerHour: 1.2, chancePct: 55, thunder: false }
    ]
  },
  {
    story: 'windy: behind the storms, dry, but too much wind to lay sheets or spray from late morning',
    minC: 12,
    maxC: 19,
    dewPointC: [12, 8, 6, 6],
    windKmh: [16, 19, 38, 30],
    gustFactor: 1.6,
    cloudPct: [70, 50, 45, 50],
    chancePct: 8,
    spells: []
  },
  {
    story: 'rain by noon: a fair early morning to be used, rain from eleven until the evening',
    minC: 9,
    maxC: 15,
    dewPointC: [5, 4, 9, 10],
    windKmh: [10, 8, 14, 18],
    gustFactor: 1.6,
    cloudPct: [45, 60, 100, 100],
    chancePct: 5,
    spells: [
      { ...dry, from: 9, to: 10, chancePct: 15 },
      { ...dry, from: 10, to: 11, chancePct: 35 },
      { ...wet, from: 11, to: 13, mmPerHour: 0.8 },
      { ...wet, from: 13, to: 17, mmPerHour: 1.6 },
      { from: 17, to: 20, mmPerHour: 0.4, chancePct: 60, thunder: false }
    ]
  },
  {
    story: 'grey and damp: low cloud, drizzle early, never far from the dew point',
    minC: 10,
    maxC: 13,
    dewPointC: [9.5, 9.5, 10.5, 10],
    windKmh: [9, 6, 8, 10],
    gustFactor: 1.5,
    cloudPct: [100, 100, 100, 95],
    chancePct: 22,
    spells: [{ from: 4, to: 8, mmPerHour: 0.1, chancePct: 45, thunder: false }]
  },
  {
    story: 'cold and clear: a north wind has dried the air, close to frost at dawn, too cold to spray early',
    minC: 1.5,
    maxC: 12,
    dewPointC: [3, -2, -3, -1],
    windKmh: [12, 9, 12, 7],
    gustFactor: 1.6,
    cloudPct: [40, 5, 10, 5],
    chancePct: 2,
    spells: []
  }
]
