import type { Concept } from './concepts.js'

/** Which numbers and names a question may bring. */
export type Takes = 'nothing' | 'strip' | 'sheets' | 'kit' | 'kit name' | 'welder'

export interface Rule {
  /** The command that answers, in its own words. */
  readonly to: string
  /** One of each of these is there. */
  readonly needs: readonly (readonly Concept[])[]
  /** And nothing else but these and little words. */
  readonly may: readonly Concept[]
  readonly takes: Takes
}

const little: readonly Concept[] = ['aux', 'can', 'what', 'when', 'howLong', 'howMuch', 'show', 'filler', 'not', 'need', 'left', 'today']
const weather: readonly Concept[] = ['cold', 'hot', 'warm', 'humid', 'wind', 'rain', 'dry', 'dew']
const work: readonly Concept[] = ['start', 'stop', 'people', 'work', 'ready', 'sheet', 'roof', 'outlook']
const asksTime: readonly Concept[] = ['when', 'howLong', 'today']

interface More {
  readonly may?: readonly Concept[]
  readonly takes?: Takes
}

function rule(to: string, needs: readonly (readonly Concept[])[], { may = [], takes = 'nothing' }: More = {}): Rule {
  return { to, needs, may: [...little, ...may], takes }
}

/** In order: the first that fits answers. None of these messages logs what a person would have to know: they bring no facts. */
export const rules: readonly Rule[] = [
  rule('help', [['help']], { may: ['use', 'work', 'start'] }),
  rule('fire', [['watch']], { may: ['fire', 'stop', 'last', 'part', 'weld', 'people', 'long', 'start', 'check', 'roof', 'hot', 'site'] }),
  rule('day csv', [['csv']], { may: ['record', 'day', 'site'] }),
  rule('day record', [['record']], { may: ['day', 'site', 'laid', 'metres', 'work', 'spray'] }),
  rule('day record', [['howMuch', 'what'], ['laid']], { may: ['metres', 'sheet', 'roll', 'roof', 'day', 'seam', 'robot', 'work'] }),
  rule('day', [['over'], ['when', 'howLong']], { may: ['spray', 'foam', 'weld', 'lay', 'work', 'people', 'roof', 'part', 'day', 'last'] }),
  rule('seal', [['over']], { may: ['open', 'check', 'fix', 'day', 'part', 'work', 'stop', 'people', 'roof', 'site'] }),
  rule('seal', [['can'], ['stop']], { may: ['day', 'part', 'work', 'people', 'roof', 'site'] }),
  rule('seal', [['what', 'show'], ['open']], { may: ['day', 'check', 'site'] }),
  rule('probe list', [['void']], { may: ['open', 'fix', 'seam', 'weld', 'joint', 'roof', 'punch', 'check', 'site', 'sheet', 'strip', 'last'] }),
  rule(
    'probe list',
    [
      ['seam', 'weld', 'joint'],
      ['fix', 'open']
    ],
    { may: ['punch', 'roof', 'check', 'site'] }
  ),
  rule('punch list', [['punch']], { may: ['open', 'fix', 'roof', 'site', 'check', 'day'] }),
  rule('punch list', [['fix'], ['left', 'need']], { may: ['open', 'site', 'roof'] }),
  rule('weld NAME chart', [['robot', 'hand'], ['chart']], { may: ['weld', 'welder', 'coupon', 'wide', 'seam'], takes: 'welder' }),
  rule(
    'weld NAME',
    [
      ['robot', 'hand'],
      ['coupon', 'cleared', 'weld', 'ready', 'hold', 'can', 'use']
    ],
    {
      may: ['coupon', 'cleared', 'weld', 'welder', 'ready', 'use', 'hold', 'metres', 'fix', 'seam', 'start', 'last', 'part', 'wide', 'joint'],
      takes: 'welder'
    }
  ),
  rule('weld', [['coupon', 'hold', 'welder']], {
    may: ['cleared', 'weld', 'welder', 'ready', 'metres', 'seam', 'people', 'last', 'use', 'fix', 'coupon', 'hold', 'check', 'start'],
    takes: 'welder'
  }),
  rule('weld', [['cleared'], ['weld', 'people']], { may: ['seam', 'people', 'weld'] }),
  rule('kit', [['kit']], {
    may: ['warm', 'ready', 'use', 'cold', 'hot', 'stop', 'open', 'foam', 'spray', 'last', 'start', 'part', 'outlook', 'check', 'work', 'site'],
    takes: 'kit'
  }),
  rule('kit', [['warm', 'ready', 'use']], { may: ['start', 'spray', 'cold', 'foam'], takes: 'kit name' }),
  rule('strip', [['strip'], ['howMuch', 'howLong', 'long', 'need', 'cut', 'what', 'wide']], {
    may: ['joint', 'sheet', 'gap', 'wide', 'long', 'cut', 'seam', 'roll', 'part'],
    takes: 'strip'
  }),
  rule(
    'sheets',
    [
      ['roll', 'sheet', 'layout'],
      ['howMuch', 'need', 'layout']
    ],
    {
      may: ['roof', 'sheet', 'roll', 'layout', 'wide', 'long', 'site', 'metres', 'joint'],
      takes: 'sheets'
    }
  ),
  rule(
    'sheets',
    [
      ['roof', 'layout'],
      ['howMuch', 'need', 'layout'],
      ['roll', 'sheet', 'kit', 'layout']
    ],
    { may: ['wide', 'long'], takes: 'sheets' }
  ),
  rule('bond', [['bond']], { may: ['check', 'roof', 'last', 'ready', 'foam', 'day'] }),
  rule('seal', [['seal']], { may: ['open', 'roof', 'sheet', 'check', 'part', 'ready', 'stop', 'day'] }),
  rule('detail', [['detail']], { may: ['check', 'open', 'fix', 'roof', 'ready', 'last'] }),
  rule('spray', [['openTime']], { may: ['foam', 'spray', 'roof', 'long'] }),
  rule('day tomorrow', [['tomorrow']], {
    may: [...weather, ...work, 'spray', 'foam', 'weld', 'lay', 'last', 'part', 'sun', 'thunder', 'falls', 'day', 'seam', 'site']
  }),
  rule('day', [['last'], ['sheet', 'roll', 'lay', 'spray']], { may: ['lay', 'sheet', 'start', 'stop', 'part', 'roll', 'roof', 'day'] }),
  rule('day', [['dry'], ['roof', 'sheet', 'when', 'howLong']], {
    may: ['humid', 'rain', 'dew', 'ready', 'roof', 'start', 'part', 'stop', 'outlook']
  }),
  rule('day', [['humid'], ['roof']], { may: ['dry', 'rain', 'dew', 'part'] }),
  rule('day', [['rain', 'dew', 'sun']], {
    may: ['falls', 'start', 'stop', 'outlook', 'part', 'roof', 'work', 'thunder', 'day', 'rain', 'dew', 'sun', 'site', 'dry', 'sheet']
  }),
  rule(
    'day',
    [
      ['spray', 'weld', 'lay', 'foam', 'work', 'start', 'stop'],
      [...asksTime, 'part']
    ],
    {
      may: ['spray', 'foam', 'weld', 'lay', 'work', 'start', 'stop', 'seam', 'sheet', 'roof', 'outlook', 'part', 'day', 'last', 'people', 'site']
    }
  ),
  rule('day', [['howLong'], ['left']], { may: ['outlook', 'part', 'day', 'work'] }),
  rule('day', [['outlook'], ['what', 'when', 'today', 'part', 'show', 'aux', 'filler']], {
    may: ['part', 'day', 'spray', 'weld', 'work', 'roof', 'site', 'falls']
  }),
  rule('day', [['day', 'today', 'part'], ['what']], { may: ['part', 'day', 'outlook', 'work', 'roof'] }),
  rule('spray', [['foam']], { may: ['cold', 'hot', 'warm', 'humid', 'wind', 'rain', 'start', 'people', 'foam'] }),
  rule('spray', [['spray']], { may: [...weather, ...work, 'spray', 'foam'] }),
  rule('air', [['lay']], { may: ['cold', 'hot', 'warm', 'wind', 'rain', 'safe', ...work, 'lay', 'roll', 'thunder'] }),
  rule('weld', [['made'], ['start']], { may: ['seam', 'people', 'part'] }),
  rule('weld', [['weld']], { may: [...weather, ...work, 'weld', 'seam', 'joint', 'lay'] }),
  rule('air', [['wind', 'people', 'work', 'hot', 'cold', 'warm', 'thunder']], { may: ['safe', ...weather, ...work, 'thunder', 'lay', 'roll'] }),
  rule('me', [['speech']], { may: [] }),
  rule('site', [['site']], { may: ['outlook', 'day'] })
]
