import type { HomeWords } from '../home-words.js'

export const home: HomeWords = {
  windowNow: (window) => `to spray: ${window}, open now`,
  windowNext: (window) => `next window to spray: ${window}`,
  noWindow: 'no window to spray any more today',
  kitReady: 'ready now',
  nextPost: (kind, at) => `next post: ${kind}, ${at}`,
  noChannel: 'no posts: the site has no channel',
  askSite: 'Ask in the channel of a site for what is not shown.',
  numbered: {
    fixed: (number) => `Void ${number}: repaired`,
    passed: (number) => `Void ${number}: passed`,
    punchDone: (number) => `Punch ${number}: done`
  }
}
