import type { ServerResponse } from 'node:http'
import { HttpError, send } from '../http.js'
import { langOf } from '../words/index.js'
import type { World } from '../world.js'
import { blocksScript } from './blocks.js'
import { css } from './css.js'
import { elementsScript } from './elements.js'
import { formScript } from './form.js'
import { html } from './html.js'
import { markupScript } from './markup.js'
import { messagesScript } from './messages.js'
import { newsScript } from './news.js'
import { suggestScript } from './suggest.js'
import { talkScript } from './talk.js'
import { whatIfScript } from './what-if.js'
import { wholeScript } from './whole.js'
import { wordsScript } from './words.js'
import { zoomScript } from './zoom.js'

/** A plain patch of our own colour: the tab of the page is found by it. */
const mark = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><rect width="16" height="16" fill="#0f5c4a"/></svg>'

/** All that the page needs, from here: nothing is fetched from elsewhere, and it works with no network. */
const assets: Readonly<Record<string, string>> = {
  'whole.js': wholeScript,
  'talk.js': talkScript,
  'markup.js': markupScript,
  'blocks.js': blocksScript,
  'elements.js': elementsScript,
  'form.js': formScript,
  'messages.js': messagesScript,
  'news.js': newsScript,
  'suggest.js': suggestScript,
  'what-if.js': whatIfScript,
  'words.js': wordsScript,
  'zoom.js': zoomScript,
  'page.css': css,
  'mark.svg': mark
}

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml'
}

/** No inline script or style, nothing from elsewhere, nobody may frame it. Pictures that are being picked are blobs. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'"
].join('; ')

export function sendPage(world: World, key: string, res: ServerResponse, asked: string | null): void {
  const { shortcuts, lang, whatIf } = world.settings
  const page = html({ key, shortcuts, lang: langOf(asked, lang), otherwise: lang, supposes: whatIf !== null })
  send(res, 200, 'text/html; charset=utf-8', page, { 'content-security-policy': policy, 'x-frame-options': 'DENY' })
}

export function sendAsset(res: ServerResponse, name: string): void {
  const body = Object.hasOwn(assets, name) ? assets[name] : undefined
  if (body === undefined) throw new HttpError(404, 'not-found')
  send(res, 200, types[name.slice(name.lastIndexOf('.'))] ?? 'text/plain', body)
}
