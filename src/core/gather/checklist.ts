import { DateTime } from 'luxon'
import { certain, type Fact, missing } from '../fact.js'
import type { Facts } from '../facts.js'
import { type Instant, localDate } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { isOffRatio, type PartReading } from '../log/states/kit.js'
import type { Noted } from '../log/states/noted.js'
import { voltageDrop } from '../welds/voltage.js'
import { inForce, isInForce } from './in-force.js'
import { last, type Memory, saidToday } from './memory.js'

export type ChecklistFacts = Pick<
  Facts,
  | 'substrateClean'
  | 'lapClean'
  | 'compatibility'
  | 'intakes'
  | 'substrateKind'
  | 'deckMoisture'
  | 'sheetState'
  | 'kit'
  | 'startUp'
  | 'dropPct'
  | 'powerMeasured'
  | 'laidAt'
  | 'thumbTest'
>

/**
 * The checklist at any instant of a local date. It changes only when something passes its age, so that a plan of a hundred instants
 * has it made a few times.
 */
export function checklists(memory: Memory, sheet: LimitsSheet, today: string): (now: Instant) => ChecklistFacts {
  const { clean, lapClean, kit } = sheet.maxAgeMin
  const aging = [
    { noted: last(memory, 'substrateClean'), maxAgeMin: clean },
    { noted: last(memory, 'lapClean'), maxAgeMin: lapClean },
    { noted: memory.kit.isoC, maxAgeMin: kit },
    { noted: memory.kit.resinC, maxAgeMin: kit }
  ]
  const made = new Map<number, ChecklistFacts>()
  return (now) => {
    // One bit for each that is in force.
    let holding = 0
    for (const { noted, maxAgeMin } of aging) holding = 2 * holding + (noted && isInForce(noted, maxAgeMin, now) ? 1 : 0)
    const known = made.get(holding)
    if (known !== undefined) return known
    const facts = gatherChecklist(memory, sheet, now, today)
    made.set(holding, facts)
    return facts
  }
}

/** What a crew states: today, within its age, or once for the site. */
function gatherChecklist(memory: Memory, sheet: LimitsSheet, now: Instant, today: string): ChecklistFacts {
  const { site } = memory
  const laidAt = memory.today.laidAt
  const thumb = saidToday(memory, 'thumbTest')
  return {
    substrateClean: inForce(last(memory, 'substrateClean'), sheet.maxAgeMin.clean, now, 'statement', missing),
    lapClean: inForce(last(memory, 'lapClean'), sheet.maxAgeMin.lapClean, now, 'statement', missing),
    compatibility: always(site.compatibility),
    intakes: always(saidToday(memory, 'intakes')),
    substrateKind: memory.settings.substrate,
    deckMoisture: always(site.deckMoisturePassed),
    sheetState: always(saidToday(memory, 'sheet')),
    kit: kitFacts(memory, sheet, now, today),
    startUp: {
      tight: always(saidToday(memory, 'tight')),
      purged: always(saidToday(memory, 'purged')),
      nozzle: always(saidToday(memory, 'nozzle')),
      // A kit that emptied unevenly stays so over night.
      tested: testedOf(memory)
    },
    ...power(memory, sheet),
    laidAt,
    thumbTest: laidAt !== null && thumb !== undefined && thumb.at >= laidAt
  }
}

function testedOf(memory: Memory): Fact<boolean> {
  const { kit } = memory
  return isOffRatio(kit) && kit.left !== undefined ? certain(false, kit.left.at, 'statement') : always(saidToday(memory, 'tested'))
}

/** What was said, however long ago. */
function always<T>(noted: Noted<T> | undefined | null): Fact<T> {
  return noted ? certain(noted.value, noted.at, 'statement') : missing
}

/** Mixed counts for today; a temperature only within its age, and only of a kit mixed shortly before it was read. */
function kitFacts({ kit, settings }: Memory, sheet: LimitsSheet, now: Instant, today: string): Facts['kit'] {
  const mixedMaxS = sheet.kit.mixedMaxMin * 60
  const mixedBefore = (part: PartReading | null) => part !== null && part.mixedAt !== null && part.at - part.mixedAt <= mixedMaxS
  const part = (reading: PartReading | null): Fact => inForce(mixedBefore(reading) ? reading : null, sheet.maxAgeMin.kit, now, 'reading', missing)
  const unmixed = [kit.isoC, kit.resinC].some((reading) => reading !== null && !mixedBefore(reading))
  const expiresOn = always(kit.expiresOn)
  return {
    name: kit.name,
    isoC: part(kit.isoC),
    resinC: part(kit.resinC),
    unmixed,
    mixed: always(kit.mixed !== null && localDate(kit.mixed.at, settings.zone) === today ? kit.mixed : null),
    expiresOn,
    daysLeft: expiresOn.value === null ? null : daysBetween(today, expiresOn.value)
  }
}

function daysBetween(from: string, to: string): number {
  const utc = { zone: 'utc' }
  return Math.round(DateTime.fromISO(to, utc).diff(DateTime.fromISO(from, utc), 'days').days)
}

/** A voltage measured at the tool after the lead was stated is worth more than the lead's sum. */
function power(memory: Memory, sheet: LimitsSheet): Pick<ChecklistFacts, 'dropPct' | 'powerMeasured'> {
  const lead = saidToday(memory, 'lead')
  const tool = saidToday(memory, 'toolV')
  const volts = lead?.value.volts ?? sheet.power.volts
  if (tool !== undefined && (lead === undefined || tool.at >= lead.at)) {
    return { dropPct: certain((1 - tool.value / volts) * 100, tool.at, 'reading'), powerMeasured: true }
  }
  if (lead === undefined) return { dropPct: missing, powerMeasured: false }
  const drop = voltageDrop({ volts, watts: lead.value.watts ?? sheet.power.watts, leadM: lead.value.leadM, areaMm2: lead.value.areaMm2 })
  return { dropPct: drop === null ? missing : certain(drop.dropPct, lead.at, 'statement'), powerMeasured: false }
}
