import { describe, expect, test } from 'vitest'
import { DrawingError } from '../../../src/bot/papers/drawing-error.js'
import { drawn } from '../../../src/bot/papers/drawn.js'
import type { DrawnFile, Paper } from '../../../src/bot/papers/paper.js'
import { hows } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { seamhands } from '../../support/seamhand.js'

const open = seamhands()
const csv: Paper<'table'> = { kind: 'table', name: 'a <!channel>.csv', alt: '', data: { head: ['a'], rows: [] } }
const pdf = { ...csv, kind: 'record', name: 'demo.pdf' } as unknown as Paper

async function draw(paper: Paper): Promise<DrawnFile> {
  if (paper.name === 'demo.pdf') return { kind: 'record', name: paper.name, alt: '', mime: 'application/pdf', sha256: '0', bytes: new Uint8Array(1) }
  throw new DrawingError('the thread that draws ended: it left with 1')
}

describe('an answer whose file cannot be drawn', () => {
  test.each(hows)('$lang, $units: says which and how to ask on, and keeps its words and the other files', async ({ lang, units }) => {
    const seamhand = await open({ weather: 'sample' })
    const reply = await seamhand.ask('day', { at: '08:00', lang, units })
    const errors: unknown[] = []
    const report = (error: unknown) => `bug-${errors.push(error)}`
    const { reply: said, files } = await drawn(reply, [csv, pdf], { draw, report })
    expect(errors).toMatchObject([{ name: 'DrawingError' }])
    expect(files.map(({ name }) => name)).toEqual(['demo.pdf'])
    expect(said.files).toMatchObject([{ name: 'demo.pdf' }])
    expect(said.text.startsWith(reply.text.slice(0, 200))).toBe(true)
    for (const words of [said.text, JSON.stringify(said.blocks.at(-1))]) expect(words).toMatch(/bug-1/)
    expect(said.text).toContain('&lt;!channel&gt;.csv')
    expect(said.blocks.slice(0, reply.blocks.length)).toEqual(reply.blocks)
    expect(blockProblems(said)).toEqual([])
  })

  test('one with no room left gives way to it', async () => {
    const seamhand = await open({ weather: 'sample' })
    const reply = await seamhand.ask('day', { at: '08:00' })
    const block = reply.blocks.at(-1) as (typeof reply.blocks)[number]
    const full = { ...reply, text: 'x'.repeat(3000), blocks: Array.from({ length: 50 }, () => block) }
    const { reply: said } = await drawn(full, [csv], { draw, report: () => 'bug-1' })
    expect(said.text).toMatch(/bug-1$/)
    expect([...said.text].length).toBeLessThanOrEqual(3000)
    expect(said.blocks).toHaveLength(50)
    expect(JSON.stringify(said.blocks.at(-1))).toContain('bug-1')
  })
})
