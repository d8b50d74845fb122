import { roomCommands } from '../commands.js'
import type { Shortcut } from '../types.js'
import { type RoomLang, roomWords, type WordName } from '../words/index.js'

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}

function meta(name: string, content: string): string {
  return `<meta name="${name}" content="${escaped(content)}">`
}

/** Writes words of the page in its language, and which they are: the scripts write them anew when the language changes. */
interface Pen {
  /** Content of an element: `<p ${…}</p>`, attributes before it. */
  readonly text: (name: WordName) => string
  readonly label: (name: WordName) => string
  readonly hint: (name: WordName) => string
}

function penOf(lang: RoomLang): Pen {
  const words = roomWords[lang]
  return {
    text: (name) => `data-t="${name}">${escaped(words[name])}`,
    label: (name) => `data-t-label="${name}" aria-label="${escaped(words[name])}"`,
    hint: (name) => `data-t-hint="${name}" placeholder="${escaped(words[name])}"`
  }
}

/** A choice whose words are not of the room: names of languages, in themselves. */
type Choice = readonly [value: string, word: WordName | { readonly as: string; readonly lang: string }]

function choices(pen: Pen, name: string, label: WordName, values: readonly Choice[]): string {
  const span = (word: Choice[1]) => (typeof word === 'string' ? `<span ${pen.text(word)}</span>` : `<span lang="${word.lang}">${word.as}</span>`)
  const items = values.map(([value, word]) => `<label class="pick"><input type="radio" name="${name}" value="${value}">${span(word)}</label>`)
  return `<fieldset><legend ${pen.text(label)}</legend><div class="picks">${items.join('')}</div></fieldset>`
}

function settings(pen: Pen): string {
  return `
<section ${pen.label('settings')}><details class="settings" id="settings">
  <summary><span ${pen.text('settings')}</span> <span id="settings-now" class="quiet"></span></summary>
  ${choices(pen, 'user', 'youAre', [
    ['crew', 'crew'],
    ['supervisor', 'supervisor'],
    ['inspector', 'inspector']
  ])}
  ${choices(pen, 'lang', 'language', [
    ['', 'asSet'],
    ['en', { as: 'English', lang: 'en' }],
    ['es', { as: 'Español', lang: 'es' }],
    ['fr', { as: 'Français', lang: 'fr' }]
  ])}
  ${choices(pen, 'units', 'units', [
    ['', 'asSet'],
    ['metric', 'metric'],
    ['us', 'us']
  ])}
</details></section>`
}

/** Where an instant is chosen and what would be said then is shown. */
function supposing(pen: Pen): string {
  return `
<dialog id="whatif" aria-labelledby="whatif-title">
  <header class="dialog-head"><h2 id="whatif-title" ${pen.text('whatIf')}</h2><button type="button" id="whatif-close" ${pen.text('close')}</button></header>
  <p class="supposed" ${pen.text('whatIfNote')}</p>
  <div class="instant">
    <p class="instant-row"><label for="whatif-at" ${pen.text('whatIfAt')}</label> <strong id="whatif-value"></strong></p>
    <input type="range" id="whatif-at" min="0" max="671" step="1" value="0">
    <div id="whatif-days" class="week" aria-hidden="true"></div>
    <div class="instant-steps">
      <button type="button" id="whatif-back" ${pen.text('hourBack')}</button>
      <button type="button" id="whatif-on" ${pen.text('hourOn')}</button>
      <button type="button" id="whatif-morning" ${pen.text('nextMorning')}</button>
    </div>
  </div>
  <p id="whatif-said" class="unseen" role="status"></p>
  <div id="whatif-told"></div>
</dialog>`
}

interface Frame {
  readonly key: string
  readonly shortcuts: readonly Shortcut[]
  readonly lang: RoomLang
  /** Language of a page that names none. */
  readonly otherwise: RoomLang
  readonly supposes: boolean
}

/** The frame of the page; the scripts fill it. */
export function html({ key, shortcuts, lang, otherwise, supposes }: Frame): string {
  const pen = penOf(lang)
  return `<!doctype html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${meta('room-key', key)}
${meta('room-lang', otherwise)}
${meta('room-commands', JSON.stringify(roomCommands))}
${meta('room-shortcuts', JSON.stringify(shortcuts))}
<title>${escaped(roomWords[lang].title)}</title>
<link rel="icon" href="/room/assets/mark.svg">
<link rel="stylesheet" href="/room/assets/page.css">
<script type="module" src="/room/assets/whole.js"></script>
</head>
<body>
<a class="skip" href="#message" ${pen.text('skip')}</a>
<div class="side">
  <header class="brand"><h1>Seamhand</h1><p class="quiet" ${pen.text('brand')}</p></header>
  <nav ${pen.label('sitesName')}><h2 ${pen.text('sites')}</h2><ul id="sites"></ul></nav>
  <section class="home" ${pen.label('homeName')}>
    <h2><button type="button" id="home-toggle" aria-expanded="true" aria-controls="home-body" ${pen.text('home')}</button></h2>
    <div id="home-body"><p class="quiet" ${pen.text('homeEmpty')}</p></div>
  </section>
  ${settings(pen)}
</div>
<main>
  <header class="site-head">
    <h2 id="site-title"></h2>
    ${supposes ? `<button type="button" id="whatif-open" hidden ${pen.text('whatIf')}</button>` : ''}
    <p id="site-note" class="quiet"></p>
    <a id="to-home" class="to-home" href="#home-toggle" ${pen.text('home')}</a>
  </header>
  <div id="log" role="log" aria-live="off" ${pen.label('messagesName')} tabindex="0"></div>
  <p id="news" class="unseen" role="status"></p>
  <p id="trouble" class="trouble" role="alert"></p>
  <div class="composer">
    <p id="replying" class="replying" hidden></p>
    <p id="picked" class="replying" hidden></p>
    <ul id="suggestions" role="listbox" ${pen.label('commands')} hidden></ul>
    <div class="write">
      <label class="attach"><input type="file" id="photo" accept="image/png,image/jpeg,image/gif"><span ${pen.text('photo')}</span></label>
      <textarea id="message" rows="1" maxlength="20000" ${pen.label('messageName')} aria-autocomplete="list" aria-controls="suggestions" autocomplete="off" ${pen.hint('placeholder')}></textarea>
      <button type="button" id="send" class="main" ${pen.label('sendName')} ${pen.text('send')}</button>
    </div>
  </div>
</main>
<dialog id="form" aria-labelledby="form-title"></dialog>
<dialog id="sure" aria-labelledby="sure-title"></dialog>
<dialog id="zoom" aria-labelledby="zoom-title"></dialog>
${supposes ? supposing(pen) : ''}
</body>
</html>
`
}
