import type { InstallWords } from '../install-words.js'

export const install: InstallWords = {
  title: 'Seamhand for your workspace',
  add: 'Add to Slack',
  done: 'Seamhand is installed. Invite it into a channel and set up a site there: /seamhand start',
  failed: 'Seamhand was not installed. Begin again at /slack/install, in this browser.'
}
