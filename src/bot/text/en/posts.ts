import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'
import { still } from './still.js'

export const posts: Pick<Text, 'posts'> = {
  posts: {
    about: (activity, site, date) => `${activity}, ${site}, ${date}`,
    window: (hours, outcome) => `${hours} ${outcome}`,
    ends: (rule) => `after: ${rule}`,
    noWindow: (least) => `no window of ${least}`,
    noForecast: 'no forecast that can be used',
    binds: (finding) => `binds: ${finding}`,
    around: (at) => `about ${at}`,
    range: (name, low, high) => `${name} ${low} to ${high}`,
    upTo: (name, high) => `${name} up to ${high}`,
    beforeWork: (readings) => `By the forecast alone. Before work: ${readings}`,
    kitCold: (air, limit) => `Kits: air down to ${air}, kit at least ${limit}: keep them in the warm box until they are used`,
    kitHot: (air, limit) => `Kits: air up to ${air}, kit at most ${limit}: keep them in the shade`,
    tomorrow: (head) => `Tomorrow: ${head}`,
    nextDay: (head) => `Next working day: ${head}`,
    boxNow: 'into the warm box now',
    wrapUp: (site, date) => `wrap-up, ${site}, ${date}`,
    open: (count) => `${count} still open`,
    nothingOpen: 'nothing left open',
    nothingLaid: 'nothing laid today',
    tonight: (list) => `Tonight: ${list}`,
    rainAmount: (amount) => `rain ${amount}`,
    anchor: (anchor) => `record up to here: ${anchor}`,
    near: { rain: 'rain now due', gust: 'gusts now due', thunder: 'thunder now due' },
    turned: (activity, is, was) => `${activity}: ${is}, was ${was}`,
    watch: 'the weather watch',
    still,
    notSent: (count) => plural('en', count, { one: `${count} post did not get out`, other: `${count} posts did not get out` }),
    whyNotSent: 'Is Seamhand in the channel, and is the channel still there? Looked for and not sent again.',
    summary: (sites, date) => `${counted('en', sites, { one: 'site', other: 'sites' })}, ${date}`,
    summaryOff: 'To have it no more: me no summary'
  }
}
