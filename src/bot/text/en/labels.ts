import type { LabelId } from '../labels.js'

export const labels: Readonly<Record<LabelId, string>> = {
  air: 'air', substrate: 'substrate', deck: 'deck', sheet: 'sheet', rh: 'humidity', humidity: 'humidity', dew: 'dew point', wind: 'wind', gust: 'gust', sun: 'sun',
  rain: 'rain', thunder: 'thunder', kit: 'kit', iso: 'iso', resin: 'resin', exp: 'expiry', expiry: 'expiry', dry: 'dry', wet: 'wet', clean: 'clean', dirty: 'dirty',
  fleece: 'fleece', lap: 'lap', compatible: 'compatible', contact: 'contact', ask: 'ask the maker', compatibility: 'compatibility', intakes: 'intakes', none: 'none', shut: 'shut', open: 'open',
  rolled: 'rolled', unrolled: 'unrolled', relaxed: 'relaxed', start: 'start', mixed: 'mixed', tight: 'tight', purged: 'purged', nozzle: 'nozzle', tested: 'tested', leak: 'leak',
  moisture: 'moisture test', thumb: 'thumb test', film: 'film', parted: 'parted', scorched: 'scorched', glossy: 'glossy', uneven: 'uneven', wrinkled: 'wrinkled', peel: 'peel',
  warm: 'warm', restart: 'restart', power: 'power lost', hand: 'hand', robot: 'robot', set: 'set-point', speed: 'speed', thick: 'thickness', operator: 'operator', welder: 'welder',
  width: 'width', lead: 'lead', course: 'course', end: 'end joint', strip: 'strip', patch: 'patch', gap: 'gap', off: 'off-centre', edge: 'edge', distance: 'distance', length: 'length',
  cause: 'cause', void: 'void', fixed: 'fixed', passed: 'passed', failed: 'failed', box: 'box', store: 'store', lot: 'lot', used: 'used', empty: 'empty', area: 'area',
  sheets: 'sheets', roll: 'roll', times: 'how many', reason: 'reason', name: 'name', time: 'time', date: 'date', site: 'site', place: 'place', zone: 'zone', lang: 'language',
  units: 'units', posts: 'posts', morning: 'morning', evening: 'evening', days: 'days', hours: 'hours', limits: 'limits sheet', channel: 'channel', number: 'number', id: 'entry', command: 'command'
}
