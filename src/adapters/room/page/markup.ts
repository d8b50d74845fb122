/** Text of a message: bold, italic, code, line breaks, dates and web links. Nodes are built, never parsed from text: whatever else stands in it is text. */
export const markupScript = String.raw`
import { locale, make, nameOf, t } from './talk.js'

const token = /<([^<>\n]+)>|${'`'}([^${'`'}\n]+)${'`'}|(?<![\p{L}\p{N}*])\*(\S(?:[^*\n]*\S)?)\*(?![\p{L}\p{N}*])|(?<![\p{L}\p{N}_])_(\S(?:[^_\n]*\S)?)_(?![\p{L}\p{N}_])/gu

export function plain(text) {
  return text.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&amp;/g, '&')
}

function spelled(text) {
  return text.split('\n').flatMap((line, i) => (i === 0 ? [plain(line)] : [make('br'), plain(line)]))
}

export function marked(text) {
  const nodes = []
  let from = 0
  for (const match of text.matchAll(token)) {
    nodes.push(...spelled(text.slice(from, match.index)))
    const [whole, angle, code, bold, italic] = match
    if (angle !== undefined) nodes.push(angled(angle))
    else if (code !== undefined) nodes.push(make('code', {}, plain(code)))
    else if (bold !== undefined) nodes.push(make('strong', {}, ...marked(bold)))
    else nodes.push(make('em', {}, ...marked(italic)))
    from = match.index + whole.length
  }
  nodes.push(...spelled(text.slice(from)))
  return nodes.filter((node) => node !== '')
}

const people = { U0CREW: 'crew', U0SUPERVISOR: 'supervisor', U0INSPECTOR: 'inspector', U0SEAMHAND: 'seamhand' }

function angled(inside) {
  const [target, label] = inside.split('|', 2)
  const date = /^!date\^(\d+)\^([^^]+)/.exec(target)
  if (date) return make('time', { datetime: new Date(date[1] * 1000).toISOString() }, dated(Number(date[1]), date[2]))
  if (/^(https?:\/\/|mailto:)/i.test(target)) return make('a', { href: plain(target), rel: 'noopener noreferrer', target: '_blank' }, plain(label ?? target))
  if (target.startsWith('@')) return '@' + (Object.hasOwn(people, target.slice(1)) ? nameOf(people[target.slice(1)]) : plain(label ?? target.slice(1)))
  if (target.startsWith('#')) return '#' + plain(label ?? target.slice(1))
  if (target.startsWith('!')) return '@' + plain(label ?? target.slice(1))
  return plain('<' + inside + '>')
}

const shapes = {
  date_num: { year: 'numeric', month: '2-digit', day: '2-digit' },
  date: { year: 'numeric', month: 'long', day: 'numeric' }, date_pretty: { year: 'numeric', month: 'long', day: 'numeric' },
  date_short: { year: 'numeric', month: 'short', day: 'numeric' }, date_short_pretty: { year: 'numeric', month: 'short', day: 'numeric' },
  date_long: { weekday: 'long', year: 'numeric', month: 'long', day: 'numeric' }, date_long_pretty: { weekday: 'long', year: 'numeric', month: 'long', day: 'numeric' },
  time: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }, time_secs: { hour: '2-digit', minute: '2-digit', second: '2-digit', hourCycle: 'h23' }
}

/** In the reader's own zone. */
function dated(seconds, format) {
  const at = new Date(seconds * 1000)
  return plain(format).replace(/\{(\w+)\}/g, (whole, name) => {
    if (!(name in shapes)) return whole
    const today = name.endsWith('pretty') && at.toDateString() === new Date().toDateString()
    return today ? t('today') : at.toLocaleString(locale(), shapes[name])
  })
}

/** A text object of a block. */
export function said(object) {
  if (!object) return []
  return object.type === 'mrkdwn' ? marked(object.text) : object.text.split('\n').flatMap((line, i) => (i === 0 ? [line] : [make('br'), line]))
}
`
