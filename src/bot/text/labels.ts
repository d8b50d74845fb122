/** Things a person can name in a message: the labels of what was understood, missing or wrong. */
export const labelIds = [
  'air', 'substrate', 'deck', 'sheet', 'rh', 'humidity', 'dew', 'wind', 'gust', 'sun', 'rain', 'thunder', 'kit', 'iso', 'resin', 'exp', 'expiry',
  'dry', 'wet', 'clean', 'dirty', 'fleece', 'lap', 'compatible', 'contact', 'ask', 'compatibility', 'intakes', 'none', 'shut', 'open', 'rolled', 'unrolled', 'relaxed',
  'start', 'mixed', 'tight', 'purged', 'nozzle', 'tested', 'leak', 'moisture', 'thumb', 'film', 'parted', 'scorched', 'glossy', 'uneven', 'wrinkled', 'peel',
  'warm', 'restart', 'power', 'hand', 'robot', 'set', 'speed', 'thick', 'operator', 'welder', 'width', 'lead', 'course', 'end', 'strip', 'patch',
  'gap', 'off', 'edge', 'distance', 'length', 'cause', 'void', 'fixed', 'passed', 'failed', 'box', 'store', 'lot', 'used', 'empty', 'area',
  'sheets', 'roll', 'times', 'reason', 'name', 'time', 'date', 'site', 'place', 'zone', 'lang', 'units', 'posts', 'morning', 'evening', 'days', 'hours',
  'limits', 'channel', 'number', 'id', 'command'
] as const
export type LabelId = (typeof labelIds)[number]
