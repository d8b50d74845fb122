import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js'
import type { DocumentData, DocumentPart } from '../../bot/papers/document.js'
import type { Draw, Paper } from '../../bot/papers/paper.js'
import { withoutTables } from './font-tables.js'

type Data = DocumentData<Paper>
type Part = DocumentPart<Paper>

const require = createRequire(import.meta.url)

/** The part of the package that is used: its types are those of the browser's. */
interface Maker {
  readonly virtualfs: { writeFileSync(name: string, bytes: Uint8Array): void }
  addFonts(fonts: Readonly<Record<string, object>>): void
  setUrlAccessPolicy(allow: (url: string) => boolean): void
  setLocalAccessPolicy(allow: (path: string) => boolean): void
  createPdf(definition: TDocumentDefinitions): { getBuffer(): Promise<Uint8Array> }
}

/**
 * Substitution and positioning, which take half the time of a document. Without them every letter stands for itself in its own width: a
 * record shows what was written, and `2x3` or a hash becomes no other sign.
 */
const leftOut = ['GSUB', 'GPOS']
/** By the names that the fonts have of themselves: under these the drawer of SVG, which looks for files, finds what is open already. */
const [regular, bold] = ['Inter-Regular', 'Inter-Bold'] as const
const files = { [regular]: '400Regular/Inter_400Regular.ttf', [bold]: '700Bold/Inter_700Bold.ttf' } as const
const maker = prepared()

function prepared(): Maker {
  const made = require('pdfmake') as Maker
  for (const [name, file] of Object.entries(files)) {
    made.virtualfs.writeFileSync(name, withoutTables(readFileSync(require.resolve(`@expo-google-fonts/inter/${file}`)), leftOut))
  }
  made.addFonts({ Inter: { normal: regular, bold, italics: regular, bolditalics: bold } })
  made.setUrlAccessPolicy(() => false)
  made.setLocalAccessPolicy(() => false)
  return made
}

const ink = '#111111'
const pictureWidth = 480
/** With its words below it, a tall picture still has its page. */
const pictureHeight = 600
const fit: [number, number] = [pictureWidth, pictureHeight]
const photoBox: [number, number] = [340, 260]

/** Sets a document on A4, one font, with its foot and number on every page. The same data gives the same bytes. */
export async function toPdf(data: Data, draw: Draw): Promise<Uint8Array> {
  const content: Content[] = [
    { text: data.title, fontSize: 18, bold: true },
    { text: data.subtitle, fontSize: 10, margin: [0, 2, 0, 8] },
    ...data.labels.map(label),
    ...(await Promise.all(data.parts.map((part) => setPart(part, draw)))).flat()
  ]
  const made = new Date(data.madeAt)
  const [page, of] = data.pageWords
  const foot = (current: number, count: number): Content => ({
    columns: [
      { text: data.foot, fontSize: 7, width: '*' },
      { text: `${page} ${current} ${of} ${count}`, fontSize: 8, width: 'auto', alignment: 'right' }
    ],
    margin: [40, 12, 40, 0],
    columnGap: 12
  })
  const document: TDocumentDefinitions = {
    pageSize: 'A4',
    pageMargins: [40, 40, 40, 50],
    language: data.lang,
    info: { title: data.title, subject: data.subtitle, creator: 'Seamhand', producer: 'Seamhand', creationDate: made, modDate: made },
    defaultStyle: { font: 'Inter', fontSize: 8.5, color: ink, lineHeight: 1.15 },
    footer: foot,
    // A heading never stands alone at the foot of a page.
    pageBreakBefore: (node, { getFollowingNodesOnPage }) => node.headlineLevel === 1 && getFollowingNodesOnPage().length < 2,
    content
  }
  return new Uint8Array(await maker.createPdf(document).getBuffer())
}

function label(text: string): Content {
  return { table: { widths: ['*'], body: [[{ text, bold: true, alignment: 'center' }]] }, margin: [0, 0, 0, 8] }
}

async function setPart(part: Part, draw: Draw): Promise<Content[]> {
  switch (part.kind) {
    case 'heading':
      return [{ text: part.text, fontSize: 12, bold: true, margin: [0, 12, 0, 4], headlineLevel: 1 }]
    case 'words':
      return [{ text: part.text, margin: [0, 0, 0, 4] }]
    case 'facts':
      return [facts(part.rows)]
    case 'table':
      return [table(part)]
    case 'picture':
      return [await picture(part, draw)]
    case 'photo':
      return [
        {
          unbreakable: true,
          margin: [0, 4, 0, 6],
          stack: [
            { image: `data:${part.mime};base64,${part.base64}`, fit: photoBox },
            { text: part.caption, fontSize: 8 }
          ]
        }
      ]
  }
}

/** Two columns without lines. */
function facts(rows: readonly (readonly [string, string])[]): Content {
  const body = rows.map(([name, value]) => [{ text: name, bold: true }, { text: breakable(value) }])
  return { table: { widths: [130, '*'], body }, layout: 'noBorders', margin: [0, 0, 0, 4] }
}

function table({ head, rows, shares }: Extract<Part, { kind: 'table' }>): Content {
  const whole = shares.reduce((sum, share) => sum + share, 0)
  const widths = shares.map((share) => `${(100 * share) / whole}%`)
  const body = [
    head.map((text) => ({ text, bold: true, fillColor: '#e6e6e6' })),
    ...rows.map((row) => row.map((text) => ({ text: breakable(text) })))
  ]
  const layout = { hLineWidth: () => 0.5, vLineWidth: () => 0, hLineColor: () => '#9a9a9a', paddingLeft: () => 2, paddingRight: () => 4 }
  return { table: { headerRows: 1, keepWithHeaderRows: 1, widths, body, dontBreakRows: true }, layout, fontSize: 7.5, margin: [0, 0, 0, 6] }
}

/** Its title, its words and the picture stay together. */
async function picture({ title, words, paper }: Extract<Part, { kind: 'picture' }>, draw: Draw): Promise<Content> {
  const { bytes, mime, alt } = await draw(paper)
  return {
    unbreakable: true,
    stack: [
      ...(title === null ? [] : [{ text: title, fontSize: 12, bold: true, margin: [0, 12, 0, 4] as [number, number, number, number] }]),
      ...(words === null ? [] : [{ text: words, margin: [0, 0, 0, 4] as [number, number, number, number] }]),
      mime === 'image/svg+xml'
        ? { svg: new TextDecoder().decode(bytes), fit }
        : { image: `data:${mime};base64,${Buffer.from(bytes).toString('base64')}`, fit },
      { text: alt, fontSize: 6.5, margin: [0, 2, 0, 4] }
    ]
  }
}

/** Long words such as hashes may break anywhere, so that no column is burst. */
function breakable(text: string): string {
  return text.replace(/\S{24,}/g, (word) => word.replace(/.{12}/gu, '$&\u200B'))
}
