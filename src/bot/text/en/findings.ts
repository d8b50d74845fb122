import type { ClosingCheck, FindingId } from '../../answer.js'
import type { FindingWords } from '../text.js'

function measured(name: string): FindingWords {
  return { name, is: { go: name, caution: name, unknown: `${name}: not known`, 'no-go': name } }
}

export const findings: Readonly<Record<Exclude<FindingId, ClosingCheck>, FindingWords>> = {
  'kit-temperature': measured('kit'),
  'air-temperature': measured('air'),
  'substrate-temperature': measured('substrate'),
  'dew-margin': measured('dew margin'),
  humidity: measured('humidity'),
  'rain-now': { name: 'rain', is: { go: 'no rain falling', caution: 'rain possible', unknown: 'rain: not known', 'no-go': 'rain falling' } },
  'rain-coming': measured('rain until closed up'),
  'wind-mean': measured('mean wind'),
  'wind-gust': measured('gust'),
  daylight: {
    name: 'daylight after closing up',
    is: { go: 'daylight left', caution: 'little daylight left', unknown: 'daylight: not known', 'no-go': 'not enough daylight to close up' }
  },
  'substrate-dry': {
    name: 'substrate dry',
    is: { go: 'substrate dry', caution: 'substrate hardly dry', unknown: 'substrate dry: not stated', 'no-go': 'substrate wet' }
  },
  'fleece-dry': {
    name: 'fleece dry',
    is: { go: 'fleece dry', caution: 'fleece hardly dry', unknown: 'fleece dry: not stated', 'no-go': 'fleece wet' }
  },
  'seam-dry': { name: 'seam dry', is: { go: 'seam dry', caution: 'seam hardly dry', unknown: 'seam dry: not stated', 'no-go': 'seam wet' } },
  'substrate-clean': {
    name: 'substrate clean',
    is: { go: 'substrate clean', caution: 'substrate hardly clean', unknown: 'substrate clean: not stated', 'no-go': 'substrate dirty' }
  },
  'lap-clean': { name: 'lap clean', is: { go: 'lap clean', caution: 'lap hardly clean', unknown: 'lap clean: not stated', 'no-go': 'lap dirty' } },
  compatibility: {
    name: 'what the sheet touches',
    is: {
      go: 'what the sheet touches is compatible',
      caution: 'what the sheet touches: ask the maker',
      unknown: 'what the sheet touches: not stated',
      'no-go': 'sheet in contact with what harms it'
    }
  },
  intakes: {
    name: 'air intakes',
    is: {
      go: 'no air intakes near',
      caution: 'air intakes shut or screened',
      unknown: 'air intakes: not stated',
      'no-go': 'air intake open downwind'
    }
  },
  'deck-moisture': {
    name: 'concrete moisture test',
    is: {
      go: 'concrete moisture test passed',
      caution: 'concrete moisture near the limit',
      unknown: 'concrete moisture: not tested',
      'no-go': 'concrete moisture test failed'
    }
  },
  'sheet-relaxed': {
    name: 'sheet unrolled for',
    is: { go: 'sheet relaxed', caution: 'sheet not relaxed long enough', unknown: 'sheet relaxed: not stated', 'no-go': 'sheet still rolled' }
  },
  'kit-mixed': {
    name: 'kit mixed',
    is: { go: 'kit mixed', caution: 'kit mixed too long ago', unknown: 'kit mixed: not stated', 'no-go': 'kit not mixed' }
  },
  'adhesive-date': {
    name: 'adhesive left before expiry',
    is: { go: 'adhesive in date', caution: 'adhesive expires soon', unknown: 'adhesive expiry: not known', 'no-go': 'adhesive past its expiry' }
  },
  'start-up': {
    name: 'start-up',
    is: {
      go: 'start-up done',
      caution: 'start-up hardly done',
      unknown: 'start-up: not all stated',
      'no-go': 'start-up failed: leak, not purged, test bad or off ratio'
    }
  },
  coupon: {
    name: 'coupon',
    is: { go: 'every welder cleared', caution: 'coupon near the limit', unknown: 'coupon: none today', 'no-go': 'welder not cleared' }
  },
  power: {
    name: 'voltage drop',
    is: { go: 'power enough', caution: 'power near the limit', unknown: 'power: not stated today', 'no-go': 'voltage drop too great' }
  },
  'traffic-wait': {
    name: 'time since the sheet was laid',
    is: {
      go: 'sheet may be walked on',
      caution: 'fresh sheet',
      unknown: 'time since the sheet was laid: not known',
      'no-go': 'sheet too fresh to walk on'
    }
  },
  thunder: { name: 'thunder', is: { go: 'no thunder', caution: 'thunder forecast within 2 h', unknown: 'thunder: not known', 'no-go': 'thunder' } },
  heat: { name: 'heat index', is: { go: 'heat index', caution: 'heat', unknown: 'heat: not known', 'no-go': 'too hot for people' } },
  cold: { name: 'feels like', is: { go: 'wind chill', caution: 'cold', unknown: 'cold: not known', 'no-go': 'too cold for people' } },
  ice: { name: 'surface', is: { go: 'no ice', caution: 'ice possible', unknown: 'ice: not known', 'no-go': 'ice: surface frozen and wet' } },
  'strip-land': measured('land each side'),
  'strip-gap': { name: 'gap', is: { go: 'gap', caution: 'gap', unknown: 'gap: not known', 'no-go': 'sheet ends overlap' } },
  'coupon-width': measured('seam width'),
  'open-voids': {
    name: 'voids not passed',
    is: { go: 'all voids passed', caution: 'voids', unknown: 'voids: not known', 'no-go': 'voids not passed' }
  },
  'test-spray': {
    name: 'test spray',
    is: { go: 'test spray good', caution: 'test spray doubtful', unknown: 'test spray: not judged', 'no-go': 'test spray bad: stop' }
  }
}
