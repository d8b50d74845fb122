import { roomCommands } from '../commands.js'
import type { Shortcut } from '../types.js'

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}

function meta(name: string, content: string): string {
  return `<meta name="${name}" content="${escaped(content)}">`
}

function choices(name: string, label: string, values: readonly (readonly [string, string])[]): string {
  const items = values.map(([value, text]) => `<label class="pick"><input type="radio" name="${name}" value="${value}"><span>${text}</span></label>`)
  return `<fieldset><legend>${label}</legend><div class="picks">${items.join('')}</div></fieldset>`
}

const settings = `
<details class="settings" id="settings">
  <summary><span>Page settings</span> <span id="settings-now" class="quiet"></span></summary>
  ${choices('user', 'You are', [
    ['crew', 'Crew'],
    ['supervisor', 'Supervisor'],
    ['inspector', 'Inspector']
  ])}
  ${choices('lang', 'Answers in', [
    ['', 'as set'],
    ['en', 'English'],
    ['es', 'Español'],
    ['fr', 'Français']
  ])}
  ${choices('units', 'Units', [
    ['', 'as set'],
    ['metric', 'metric'],
    ['us', 'US']
  ])}
</details>`

/** The frame of the page; the scripts fill it. */
export function html(key: string, shortcuts: readonly Shortcut[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${meta('room-key', key)}
${meta('room-commands', JSON.stringify(roomCommands))}
${meta('room-shortcuts', JSON.stringify(shortcuts))}
<title>Seamhand, local room</title>
<link rel="icon" href="/room/assets/mark.svg">
<link rel="stylesheet" href="/room/assets/page.css">
<script type="module" src="/room/assets/whole.js"></script>
</head>
<body>
<a class="skip" href="#message">Skip to the message box</a>
<div class="side">
  <header class="brand"><h1>Seamhand</h1><p class="quiet">local room: all of it runs on this computer</p></header>
  <nav aria-label="Sites"><h2>Sites</h2><ul id="sites"></ul></nav>
  ${settings}
  <section class="home" aria-label="Home">
    <h2><button type="button" id="home-toggle" aria-expanded="true" aria-controls="home-body">Home</button></h2>
    <div id="home-body"><p class="quiet">Nothing here yet.</p></div>
  </section>
</div>
<main>
  <header class="site-head"><h2 id="site-title"></h2><p id="site-note" class="quiet"></p></header>
  <div id="log" role="log" aria-label="Messages" tabindex="0"></div>
  <p id="trouble" class="trouble" role="alert"></p>
  <div class="composer">
    <p id="replying" class="replying" hidden></p>
    <p id="picked" class="replying" hidden></p>
    <ul id="suggestions" role="listbox" aria-label="Commands" hidden></ul>
    <div class="write">
      <label class="attach"><input type="file" id="photo" accept="image/png,image/jpeg,image/gif"><span>Photo</span></label>
      <textarea id="message" rows="1" maxlength="20000" aria-label="Message" aria-autocomplete="list" aria-controls="suggestions" autocomplete="off" placeholder="Ask in plain words, or start with /"></textarea>
      <button type="button" id="send" class="main">Send</button>
    </div>
  </div>
</main>
<dialog id="form" aria-labelledby="form-title"></dialog>
<dialog id="sure" aria-labelledby="sure-title"></dialog>
</body>
</html>
`
}
