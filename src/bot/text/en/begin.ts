import type { BeginWords } from '../begin-words.js'

export const begin: BeginWords = {
  start: 'set up a site',
  made: (site) => `site ${site} is set up`,
  how: 'One line is enough: start north at 50.1,8.2 zone Europe/Berlin units metric',
  form: 'In the chat, /seamhand start opens a form for it.',
  firstPost: (kind, at) => `First post: ${kind}, ${at}`,
  noPost: 'No posts: it has no channel. Set one in it: site channel CHANNEL',
  invite: 'Invite the bot into its channel, so that posts get there: /invite @Seamhand',
  afterwards: 'Then: day start before the first spray, help guide for the crew, role PERSON supervisor to name another supervisor.',
  role: (person, role) => `${person}: ${role}`,
  named: (person, role) => `${person} is ${role} from now on`,
  roles: { supervisor: 'supervisor', crew: 'crew', inspector: 'inspector' },
  supervisors: (list) => `Supervisors: ${list}`,
  known: (list) => `Type @ and choose the person, or write the id. Known here: ${list}`,
  noSupervisor: 'No supervisor yet: whoever speaks first in the chat is one.',
  askOne: (list) => `Ask a supervisor: ${list}`,
  lastSupervisor: 'the only supervisor: name another one first'
}
