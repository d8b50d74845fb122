import { describe, expect, it } from 'vitest'
import { decisionData } from '../../../src/bot/decision/decision-data.js'
import { toJsonObject } from '../../../src/bot/json.js'
import { decide } from '../../../src/core/decide.js'
import { engineVersion } from '../../../src/core/engine.js'
import { canonical } from '../../../src/core/log/canonical.js'
import { goFacts, reading, sheet as sheetOf } from '../../support/facts.js'

const sheet = sheetOf()
const go = goFacts()
const facts = { ...go, airC: reading(1.23456789), laidAt: go.at - 60 }
const decision = decide('spray', facts, sheet)
const data = decisionData({ sheet, forecast: null }, decision, facts)

describe('what a decision entry holds', () => {
  it('is the whole decision and every input, six decimals, instants as text: as the general way to JSON makes it', () => {
    const { findings, ...rest } = decision
    const told = findings.map(({ ease: _ease, because: _because, ...finding }) => finding)
    const limits = { id: sheet.id, version: sheet.version, sha256: sheet.sha256 }
    const whole = toJsonObject({ ...rest, findings: told, inputs: facts, limits, weather: null, engine: engineVersion })
    expect(canonical(data)).toBe(canonical(whole))
    expect(data.inputs).toMatchObject({ airC: { value: 1.234568 }, laidAt: '2026-05-04T09:59:00Z' })
  })

  it('refuses a number that is none', () => {
    expect(() => decisionData({ sheet, forecast: null }, decision, { ...facts, airC: reading(Number.NaN) })).toThrow('finite')
  })

  it('stands in order of name, so that nothing has to be sorted for its hash', () => {
    const inOrder = (value: object) => expect(Object.keys(value)).toEqual(Object.keys(value).sort())
    inOrder(data)
    for (const finding of data.findings as object[]) inOrder(finding)
    inOrder((data.inputs as { airC: object }).airC)
  })
})
