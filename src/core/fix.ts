/** What to do next, as `verb:what`. Every language has words for each (text/fixes). */
export const fixes = [
  'read:kit', 'read:air', 'read:humidity', 'read:substrate', 'read:sheet', 'read:wind', 'read:gust',
  'state:rain', 'state:chance', 'state:dry', 'state:fleece', 'state:clean', 'state:lap', 'state:compatibility', 'state:intakes', 'state:moisture',
  'state:unrolled', 'state:mixed', 'state:expiry', 'state:tight', 'state:purged', 'state:nozzle', 'state:tested', 'state:lead', 'state:thunder', 'state:peel',
  'warm:kit', 'cool:kit', 'mix:kit', 'change:kit',
  'wait:air', 'wait:substrate', 'wait:dew', 'wait:humidity', 'wait:rain', 'wait:wind', 'wait:daylight', 'wait:thunder', 'wait:heat', 'wait:cold', 'wait:ice',
  'wait:relaxed', 'wait:traffic', 'wait:cooled',
  'close:openings', 'shield:wind', 'rest:shade', 'rest:warm', 'watch:ice', 'wipe:seam',
  'dry:substrate', 'dry:fleece', 'dry:seam', 'clean:substrate', 'clean:lap', 'separate:contact', 'ask:maker', 'shut:intakes', 'test:moisture',
  'unroll:sheet', 'tighten:hoses', 'purge:kit', 'fit:nozzle', 'test:spray', 'weld:coupon', 'shorten:lead',
  'widen:strip', 'trim:gap', 'repair:void', 'probe:void'
] as const
export type Fix = (typeof fixes)[number]
