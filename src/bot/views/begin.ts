import type { Answer, PersonRole } from '../answer.js'
import type { Text } from '../text/text.js'
import { clockOf } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { flag, oneOf, row, str, strings } from './read.js'
import { settingLines } from './site.js'
import { pageOf } from './view.js'
import { who, whoAll } from './who.js'

/** `start`: the site that was made and what comes next, or how to begin. */
export function startView(answer: Answer, how: How, text: Text): Page {
  const { begin, site, frame } = text
  const settings = row(answer.numbers, 'site')
  if (settings === null || answer.site === null) {
    const names = strings(answer.numbers, 'sites').map((name) => escapeText(name, 60))
    const sites = names.length === 0 ? [] : [`${site.sites}${frame.colon}${names.join(', ')}`]
    return pageOf(answer, { about: begin.start, lines: [begin.form, begin.how, ...sites] }, how, text)
  }
  const ofSite = { ...how, zone: str(settings, 'zone') ?? how.zone }
  const lines = [...nextLines(answer, ofSite, text), begin.afterwards]
  return pageOf(answer, { about: begin.made(escapeText(answer.site, 60)), lines, details: settingLines(settings, ofSite, text) }, how, text)
}

function nextLines({ numbers, at }: Answer, how: How, { begin, site }: Text): readonly string[] {
  const settings = row(numbers, 'site') ?? {}
  const next = row(numbers, 'next')
  if (str(settings, 'channel') === null) return [begin.noPost]
  // Where every site has its channel by its name the bot is in it already.
  const invite = flag(numbers, 'invited') === true ? [] : [begin.invite]
  if (next === null) return invite
  const kind = str(next, 'kind') ?? ''
  return [begin.firstPost(site.posts[kind] ?? escapeText(kind, 40), clockOf(str(next, 'at'), at, how) ?? ''), ...invite]
}

/** `role`: whose it is, and who the supervisors are. */
export function roleView(answer: Answer, how: How, text: Text): Page {
  const { begin } = text
  const { numbers } = answer
  const supervisors = strings(numbers, 'supervisors')
  const role = begin.roles[oneOf<PersonRole>(numbers, 'role', begin.roles) ?? 'crew']
  const person = who(str(numbers, 'person') ?? '')
  const about = text.labels.role
  const said = flag(numbers, 'named') === true ? begin.named(person, role) : begin.role(person, role)
  const lines = [said, supervisors.length === 0 ? begin.noSupervisor : begin.supervisors(whoAll(supervisors))]
  return pageOf(answer, { about, lines }, how, text)
}
