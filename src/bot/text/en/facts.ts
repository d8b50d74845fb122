import type { FactWords } from '../fact-words.js'

export const facts: FactWords = {
  notLogged: (list) => `Not logged yet: ${list}`,
  write: 'To log it, send the line that is so:',
  topics: {
    thunder: {
      name: 'thunder',
      say: [
        ['thunder or lightning', '/air thunder'],
        ['none', '/air no thunder']
      ]
    },
    rain: {
      name: 'rain',
      say: [
        ['rain is falling', '/air rain'],
        ['no rain now', '/air no rain']
      ]
    },
    deck: {
      name: 'roof wet or dry',
      say: [
        ['roof wet', '/spray deck wet'],
        ['roof dry', '/spray deck dry']
      ]
    },
    deckClean: {
      name: 'roof clean or dirty',
      say: [
        ['roof dirty', '/spray deck dirty'],
        ['roof clean', '/spray deck clean']
      ]
    },
    fleece: {
      name: 'fleece wet or dry',
      say: [
        ['fleece wet', '/spray fleece wet'],
        ['fleece dry', '/spray fleece dry']
      ]
    },
    lap: {
      name: 'lap wet or dry',
      say: [
        ['lap wet', '/weld lap wet'],
        ['lap dry', '/weld lap dry']
      ]
    },
    lapClean: {
      name: 'lap clean or dirty',
      say: [
        ['lap dirty', '/weld lap dirty'],
        ['lap clean', '/weld lap clean']
      ]
    },
    power: {
      name: 'power lost',
      say: [
        ['power lost at the robot', '/weld robot power'],
        ['at the hand welder', '/weld hand power']
      ]
    }
  }
}
