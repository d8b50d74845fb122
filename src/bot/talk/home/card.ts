import type { Button, KnownBlock } from '@slack/types'
import { localTime } from '../../../core/instant.js'
import type { VoidState } from '../../../core/log/states/void.js'
import { nextSlot } from '../../../core/schedule.js'
import { mendOf } from '../../../core/welds/mend.js'
import type { Lang } from '../../answer.js'
import { boxCOf, timesOfKit } from '../../decision/kit-times.js'
import type { FormId } from '../../forms/form-id.js'
import { alertLinesOf } from '../../posts/day-lines.js'
import { postKinds, scheduleOf } from '../../posts/index.js'
import { itemLines } from '../../posts/open-lines.js'
import { texts } from '../../text/index.js'
import type { Text } from '../../text/text.js'
import { clock } from '../../views/clock.js'
import { escapeText } from '../../views/escape.js'
import type { How } from '../../views/how.js'
import { shapes } from '../../views/outcome.js'
import { section, wholeLines } from '../../views/page.js'
import { welderName } from '../../views/welder.js'
import { formButton, numberedButton, sayButton } from '../buttons.js'
import type { Look } from './look.js'

const mostKits = 3
const mostButtons = 5
const sectionMax = 2900

/** Who reads, and what they may do. */
export interface Reader {
  readonly workspace: string
  readonly how: Pick<How, 'lang' | 'units'>
  /** False: an inspector, who gets no button that logs. */
  readonly acting: boolean
  /** The channel of a site that none is set for. */
  readonly ownChannel: (site: string) => string | null
}

/** A site on home: what can be done now and next, what stands open, and buttons for the next thing. */
export function cardOf(look: Look, reader: Reader): KnownBlock[] {
  const text = texts[reader.how.lang]
  const how = { ...reader.how, zone: look.on.settings.zone }
  const invented = look.on.settings.invented ? ` (${text.talk.inventedSite})` : ''
  const [head = '', second = ''] = look.reply.text.split('\n')
  const lines = [
    `*${escapeText(look.site)}*${invented}`,
    `${head} · ${text.talk.askNow}`,
    second,
    windowLine(look, how, text),
    ...alertLinesOf(look.on, look.on.date, look.on.now, how, text),
    ...look.open.flatMap((item) => itemLines(item, look.on, how, text).map((line) => `${shapes[item.outcome]} ${line}`)),
    ...look.lapsed.map((name) => `${shapes['no-go']} ${welderName(name, text)}${text.frame.colon}${text.coupon.notCleared}`),
    ...kitLines(look, how, text),
    ...postLine(look, reader, how, text)
  ]
  const elements = buttonsOf(look, reader)
  return [section(wholeLines(lines, sectionMax)), ...(elements.length === 0 ? [] : [{ type: 'actions' as const, elements }])]
}

function windowLine({ window, known, on }: Look, how: How, text: Text): string {
  const { home } = text
  if (!known) return text.posts.noForecast
  if (window === null) return home.noWindow
  const hours = `${localTime(window.from, how.zone)}–${localTime(window.to, how.zone)}`
  const said = text.posts.window(hours, text.outcomesWithin[window.outcome])
  return window.from <= on.now ? home.windowNow(said) : home.windowNext(said)
}

/** "K7: ready by 10:40 · too cold from 14:20" of the kits that are not empty. */
function kitLines({ on }: Look, how: How, text: Text): readonly string[] {
  const { settings, sheet, forecast, now, memory, record } = on
  const standing = record.kits.filter(({ empty }) => !empty)
  const boxC = boxCOf(record.kits)
  const lines = standing.slice(0, mostKits).map((kit) => {
    const name = text.kit.name(escapeText(kit.name, 40))
    if (kit.isoC === null && kit.resinC === null) return `${name}${text.frame.colon}${text.fixes['read:kit']}`
    const times = timesOfKit(kit, { settings, sheet, forecast, boxC, learned: memory.site.learned ?? null, now })
    const said = [
      ...(times.readyAt === null ? [] : [times.readyAt <= now ? text.home.kitReady : text.kit.ready(clock(times.readyAt, now, how))]),
      ...(times.coldAt === null ? [] : [text.kit.cold(clock(times.coldAt, now, how))])
    ]
    return said.length === 0 ? name : `${name}${text.frame.colon}${said.join(' · ')}`
  })
  return standing.length > mostKits ? [...lines, text.frame.more(standing.length - mostKits)] : lines
}

function postLine({ site, on }: Look, { workspace, ownChannel }: Reader, how: How, text: Text): readonly string[] {
  const { settings, now } = on
  if ((settings.channel ?? ownChannel(site)) === null) return [text.home.noChannel]
  const slot = nextSlot(now, scheduleOf({ workspace, site }, settings), postKinds)
  return slot === null ? [] : [text.home.nextPost(text.site.posts[slot.kind] ?? slot.kind, clock(slot.dueAt, now, how))]
}

/** The next things first: a void, a coupon, what is not known; then what is always of use. */
function buttonsOf(look: Look, { how: { lang }, acting }: Reader): Button[] {
  const { site, reply, on, lapsed, open } = look
  if (!acting) return [sayButton('spray', 'spray', site, lang, false)]
  const unknown = (group: string) => reply.findings.some((finding) => isUnknown(finding, group))
  const form = (id: FormId, wanted: boolean) => (wanted ? [formButton(id, site, lang, false)] : [])
  const punch = open.flatMap((item) => (item.what === 'punch' ? item.numbers : []))[0]
  const steps: Button[] = [
    ...voidButtons(on.record.voids, site, lang),
    ...form('coupon', lapsed.length > 0),
    ...(punch === undefined ? [] : [numberedButton('punchDone', punch, `punch ${punch} done`, site, lang)]),
    ...form('checklist', unknown('checklist')),
    ...form('readings', unknown('conditions')),
    sayButton('spray', 'spray', site, lang, false),
    ...form('void', true)
  ].slice(0, mostButtons)
  const [first, ...rest] = steps
  return first === undefined ? [] : [{ ...first, style: 'primary' }, ...rest]
}

/** The oldest void that waits for its repair, and the oldest that waits for its second probe. */
function voidButtons(voids: Look['on']['record']['voids'], site: string, lang: Lang): Button[] {
  const oldest = (state: 'open' | 'repaired') => voids.filter((each) => each.state === state).sort((a, b) => a.number - b.number)[0]
  const [open, repaired] = [oldest('open'), oldest('repaired')]
  return [
    ...(open === undefined ? [] : [numberedButton('fixed', open.number, repairWords(open), site, lang)]),
    ...(repaired === undefined ? [] : [numberedButton('passed', repaired.number, `probe ${repaired.number} passed`, site, lang)])
  ]
}

/** What cannot be welded shut is mended with a patch. */
function repairWords({ number, found, failures }: VoidState): string {
  return mendOf(found, failures).patchMm === null ? `probe ${number} fixed` : `probe ${number} fixed patch`
}

function isUnknown(finding: Look['reply']['findings'][number], group: string): boolean {
  const { outcome, group: of } = finding as { outcome?: string; group?: string }
  return outcome === 'unknown' && of === group
}
