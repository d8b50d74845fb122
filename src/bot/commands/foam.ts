import type { Finding } from '../../core/finding.js'
import { openTimeS as plainOpenTimeS } from '../../core/kits/open-time.js'
import { anyOpenTime, judgeTestSpray } from '../../core/kits/test-spray.js'
import type { KitData } from '../../core/log/data.js'
import { emptySite } from '../../core/log/states/site.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { factsNow } from '../decision/facts-now.js'
import { firstKit } from '../session/remember.js'
import type { Said } from '../words/said.js'

/** A test spray: says good or what is wrong, and scales the open time until the kit changes or the substrate moves. */
export async function foam(said: Extract<Said, { command: 'foam' }>, on: OnSite, at: number): Promise<Done> {
  // Nothing seen is no test: it must not state the last step of the start-up.
  if (said.gelS === null && said.signs.length === 0) return refuse('missing', null, { label: 'seconds' })
  const { session, sheet } = on
  const name = ((await session.state('site')) ?? emptySite).kit ?? firstKit
  const { facts } = await factsNow({ ...on, session: session.asOf(at) })
  const substrateC = facts.substrateC.value
  const sheetS = substrateC === null ? null : plainOpenTimeS(substrateC, sheet.foam.openTime)
  const range = sheetS === null ? anyOpenTime(sheet.foam.openTime) : { fastestS: sheetS, slowestS: sheetS }
  const verdict = judgeTestSpray(said.signs, said.gelS, range)
  const test: NonNullable<KitData['foam']> = {
    signs: said.signs,
    verdict,
    ...(said.gelS === null ? {} : { gelS: said.gelS }),
    ...(substrateC === null ? {} : { substrateC })
  }
  await session.log('kit', `kit:${name}`, { foam: test }, at)
  const finding = testFinding(verdict === 'good', at)
  return told({
    command: 'foam',
    outcome: finding.outcome,
    findings: [finding],
    numbers: {
      openTimeS: said.gelS ?? sheetS,
      scale: said.gelS === null || sheetS === null ? null : said.gelS / sheetS,
      verdict,
      kit: name,
      measured: said.gelS !== null
    }
  })
}

function testFinding(good: boolean, at: number): Finding<'test-spray'> {
  return {
    rule: 'test-spray',
    activity: 'spray',
    group: 'checklist',
    outcome: good ? 'go' : 'no-go',
    value: good,
    unit: null,
    limit: null,
    margin: null,
    spread: 0,
    origin: 'statement',
    at,
    stale: false,
    fix: good ? null : 'test:spray',
    ease: null
  }
}
