import { toIso } from '../../../core/instant.js'
import { outcomes } from '../../../core/outcome.js'
import { counting } from '../../../core/record/day-log.js'
import { metresOf } from '../../../core/welds/holding.js'
import { stepsSaid } from '../../../core/welds/steps-said.js'
import { openLines } from '../../posts/open-lines.js'
import { texts } from '../../text/index.js'
import type { Text } from '../../text/text.js'
import { amount } from '../../views/amount.js'
import { clock, dateOf } from '../../views/clock.js'
import type { How } from '../../views/how.js'
import { shapes } from '../../views/outcome.js'
import { welderName } from '../../views/welder.js'
import type { DocumentData, DocumentPart } from '../document.js'
import type { Paper } from '../paper.js'
import { plainText } from './entry-words.js'
import { type Gathered, timeOf } from './gathered.js'
import { decisionSection, entrySections, heading, logSection } from './sections.js'

type Part = DocumentPart<Paper>

/** The record of one day as a document. Pure: the same log gives the same words. */
export function dayDocument(on: Gathered, how: How): DocumentData<Paper> {
  return { ...dayFrame(on, how), parts: dayParts(on, how, texts[how.lang]) }
}

/** A document without its parts. */
export function dayFrame(on: Gathered, how: How): Omit<DocumentData<Paper>, 'parts'> {
  const { record, frame, dayPicture } = texts[how.lang]
  const date = dateOf(on.date, how) ?? on.date
  return {
    lang: how.lang,
    title: record.title(plainText(on.site)),
    subtitle: date,
    labels: on.settings.invented ? [`${frame.invented} · ${dayPicture.inventedWeek}`] : [],
    foot: footOf(on, date),
    pageWords: record.pageWords,
    madeAt: toIso(on.now)
  }
}

export function footOf({ site, anchor }: Gathered, date: string): string {
  return [plainText(site), date, ...(anchor === null ? [] : [anchor])].join(' · ')
}

/** The parts of one day, as they stand in its own record and in the packet of the site. */
export function dayParts(on: Gathered, how: How, text: Text): readonly Part[] {
  return [
    heading('summary', text),
    { kind: 'facts', rows: summary(on, how, text) },
    ...openSection(on, how, text),
    ...decisionSection(on, how, text),
    ...forecastSection(on, how, text),
    ...entrySections(on, how, text),
    ...voidStates(on, how, text),
    ...photoParts(on, how, text),
    ...logSection(on, how, text),
    ...proofSection(on, text)
  ]
}

function summary(on: Gathered, how: How, text: Text): readonly (readonly [string, string])[] {
  const { facts, coupons, voids } = text.record
  const { settings, sheet, siteState, lines, day } = on
  const judged = counting(lines, 'coupon').map(({ data }) => data.passed)
  const count = (value: unknown) => judged.filter((passed) => passed === value).length
  const unsettled = Object.values(siteState.voids.unsettled)
  const states = (state: string) => unsettled.filter((each) => each === state).length
  const { roof } = settings
  const weather = weatherSources(on, text)
  return [
    [facts.site, plainText(on.site)],
    [facts.place, `${settings.lat}, ${settings.lon}`],
    [facts.zone, settings.zone],
    ...(roof === null
      ? []
      : [[facts.roof, text.site.roof(amount(roof.widthM, 'm', how), amount(roof.depthM, 'm', how), amount(roof.heightM, 'm', how))] as const]),
    [facts.substrate, substrateWords(settings.substrate, text)],
    [facts.limits, `${plainText(sheet.id)} v${sheet.version} · ${sheet.sha256}`],
    [facts.area, amount(day.areaM2, 'm2', how)],
    [facts.welded, text.laid.welded(amount(day.robotM, 'm', how), amount(day.handM, 'm', how))],
    ...metresRows(on, how, text),
    [facts.coupons, coupons(count(true), count(false), count(null))],
    [facts.voids, voids(counting(lines, 'void').length, states('open'), states('repaired'), siteState.voids.passed)],
    [facts.decisions, String(counting(lines, 'decision').length)],
    [facts.overrides, String(counting(lines, 'override').length)],
    ...(weather === '' ? [] : [[facts.weather, weather] as const]),
    [facts.entries, String(lines.length)],
    [facts.madeAt, `${toIso(on.now)} (${clock(on.now, on.now, how)})`]
  ]
}

/** Of each welder what may be said of its metres, from the first day to the end of this one. */
function metresRows({ welders }: Gathered, how: How, text: Text): readonly (readonly [string, string])[] {
  return welders.map((welder) => {
    const { clearedM, onHoldM, releasedM } = metresOf(welder)
    const metres = (value: number) => amount(value, 'm', how)
    return [welderName(welder.name, text), text.weld.metres(metres(clearedM), metres(onHoldM), metres(releasedM))]
  })
}

function substrateWords(substrate: string, { site }: Text): string {
  const words: Readonly<Record<string, string>> = site.substrates
  return words[substrate] ?? plainText(substrate)
}

/** Each source is named as its licence asks. */
function weatherSources({ lines }: Gathered, { frame }: Text): string {
  const sources = counting(lines, 'decision').flatMap(({ data }) => (data.weather as { source?: string } | null)?.source ?? [])
  return [...new Set(sources)].map((source) => frame.attribution[source] ?? plainText(source)).join(', ')
}

function forecastSection({ picture }: Gathered, how: How, text: Text): readonly Part[] {
  if (picture === null) return []
  const known = text.record.knownAt(clock(picture.knownAt, picture.knownAt, how))
  return [{ kind: 'picture', title: text.record.sections.forecast, words: known, paper: picture.paper }]
}

/** Where each void of the day, and each that is not settled, stands in the end. */
function voidStates({ voids }: Gathered, how: How, text: Text): readonly Part[] {
  if (voids.length === 0) return []
  const { columns, members } = text.record
  const { probe } = text
  const rows = voids.map(({ number, state, found, failures, warm, repair }) => [
    String(number),
    [probe.course(found.course), probe.on[found.on], ...(found.distanceM === null ? [] : [probe.at(amount(found.distanceM, 'm', how))])].join(', '),
    amount(found.lengthMm, 'mm', how),
    found.causes.map((cause) => probe.causes[cause]).join(', '),
    [
      probe.states[state],
      ...(failures === 0 ? [] : [`${text.record.codes.failed} × ${failures}`]),
      ...(state === 'passed' && warm === true ? [text.first.passedWarm] : []),
      ...(state === 'open' || stepsSaid({ ...(repair && { repair }) }) ? [] : [text.first.stepsUnsaid])
    ].join(' · ')
  ])
  return [
    { kind: 'table', head: [columns.number, columns.where, members.lengthMm, members.causes, columns.state], rows, shares: [8, 36, 12, 20, 24] }
  ]
}

/** By the same gate as the wrap-up. */
function openSection({ siteState, day, yesterday, welders, voids, settings, until }: Gathered, how: How, text: Text): readonly Part[] {
  const on = { memory: { site: siteState, today: day, yesterday }, record: { welders, voids }, settings, now: until }
  const { lines } = openLines(on, how, text)
  const said = lines.length === 0 ? [text.record.nothingOpen] : lines.map((line) => spelled(line, text))
  return [heading('stillOpen', text), ...said.map((line): Part => ({ kind: 'words', text: line }))]
}

/** The shape of an outcome as its word: the font of the document has no such signs. */
function spelled(line: string, { outcomesWithin, frame }: Text): string {
  const outcome = outcomes.find((each) => line.startsWith(`${shapes[each]} `))
  return outcome === undefined ? line : `${outcomesWithin[outcome]}${frame.colon}${line.slice(shapes[outcome].length + 1)}`
}

function photoParts({ photos, settings }: Gathered, _how: How, text: Text): readonly Part[] {
  const { record } = text
  return photos.map(({ entry, at, subject, mime, base64 }) => {
    const caption = `${record.photo(entry, timeOf(at, settings.zone))} · ${plainText(subject)}`
    return base64 === null ? { kind: 'words', text: `${caption}. ${record.photoMissing}` } : { kind: 'photo', mime, base64, caption }
  })
}

function proofSection({ anchor }: Gathered, text: Text): readonly Part[] {
  const { record } = text
  const proof: readonly Part[] =
    anchor === null
      ? []
      : [
          { kind: 'facts', rows: [[record.facts.anchor, anchor]] },
          { kind: 'words', text: record.proof(anchor) }
        ]
  return [heading('proof', text), ...proof, { kind: 'words', text: record.deferral }]
}
