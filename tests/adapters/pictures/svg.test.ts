import { describe, expect, test } from 'vitest'
import { escapeXml, fitted, number, tag, words } from '../../../src/adapters/pictures/svg.js'

describe('pieces of SVG', () => {
  // The five predefined entities (4.6) and the characters that may stand in a document (2.2): W3C, XML 1.0, fifth edition.
  test('escapes what XML reserves and leaves out what it forbids', () => {
    expect(escapeXml(`<a b="c" d='e'>&amp;`)).toBe('&lt;a b=&quot;c&quot; d=&#39;e&#39;&gt;&amp;amp;')
    expect(escapeXml('a\u0000b\u0008c\u001fd\ud800e\ufffef\tg')).toBe('abcdef\tg')
    expect(escapeXml('é…✓😀')).toBe('é…✓😀')
  })

  test('escapes attributes too', () => {
    expect(tag('g', { id: '"><script>' })).toBe('<g id="&quot;&gt;&lt;script&gt;"/>')
    expect(tag('g', {}, ['<a/>', '<b/>'])).toBe('<g><a/><b/></g>')
    expect(words(1, 2, '<b>', { size: 30 })).toContain('>&lt;b&gt;</text>')
  })

  test('cuts numbers to two decimals, without a minus before nothing', () => {
    expect([1, 1.005, -0.001, 12.3456, 1e6].map(number)).toEqual(['1', '1', '0', '12.35', '1000000'])
  })

  test('cuts words to a width, by whole characters', () => {
    expect(fitted('demo', 30, 500)).toBe('demo')
    expect(fitted('😀'.repeat(30), 30, 180)).toBe(`${'😀'.repeat(9)}…`)
    expect(fitted('demo', 30, -5)).toBe('…')
  })
})
