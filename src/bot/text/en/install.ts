import type { InstallWords } from '../install-words.js'

export const install: InstallWords = {
  title: 'Seamhand for your workspace',
  add: 'Add to Slack',
  done: 'Seamhand is installed. Invite it into a channel and make a site there: /site new NAME at LAT,LON zone Area/City',
  failed: 'Seamhand was not installed. Begin again at /slack/install, in this browser.'
}
