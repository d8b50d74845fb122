/** Our own look: a log book in clear weather. High contrast for glare, large marks for gloves, dark by night. */
export const css = `
:root {
  color-scheme: light dark;
  --paper: #f6f4ee; --sheet: #ffffff; --ink: #14201c; --quiet: #4b5a54; --line: #c9cdc3; --rule: #0f5c4a; --rule-ink: #ffffff; --tint: #e3efe9;
  --warn: #8f1d14; --warn-tint: #fbe9e5; --alone: #fff6d8; --alone-line: #8a6100; --focus: #b34700;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #101614; --sheet: #19211e; --ink: #eef3ee; --quiet: #b3c0b9; --line: #3a4742; --rule: #7fd6b8; --rule-ink: #08231b; --tint: #20352d;
    --warn: #ffb4a6; --warn-tint: #3d1d18; --alone: #2f2811; --alone-line: #e6c466; --focus: #ffb066;
  }
}
* { box-sizing: border-box; }
[hidden] { display: none !important; }
html { font: 400 1.0625rem/1.45 system-ui, -apple-system, 'Segoe UI', 'Noto Sans', sans-serif; }
body { margin: 0; background: var(--paper); color: var(--ink); min-height: 100dvh; display: flex; flex-direction: column; overflow-wrap: anywhere; }
h1, h2, h3, h4, p, ul, figure, fieldset { margin: 0; padding: 0; }
h1 { font-size: 1.25rem; letter-spacing: .01em; }
h2 { font-size: 1rem; }
ul { list-style: none; }
fieldset { border: 0; min-width: 0; }
legend { padding: 0; }
.quiet, small { color: var(--quiet); font-size: .9375rem; }
:focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; border-radius: 4px; }
.skip { position: absolute; left: -100vw; top: 0; background: var(--sheet); color: var(--ink); padding: .75rem; z-index: 9; }
.skip:focus { left: 0; }

button, select, input[type=text], input[type=date], input[type=time], textarea, .attach span {
  font: inherit; color: var(--ink); background: var(--sheet); border: 2px solid var(--quiet); border-radius: 6px; min-height: 2.875rem; padding: .5rem .875rem; max-width: 100%;
}
::placeholder { color: var(--quiet); opacity: 1; }
button, .attach span, select { cursor: pointer; font-weight: 600; }
button:hover, .attach:hover span { background: var(--tint); }
button:disabled, [aria-busy=true] { opacity: .6; cursor: progress; }
button.main { background: var(--rule); border-color: var(--rule); color: var(--rule-ink); }
button.danger { border-color: var(--warn); color: var(--warn); border-style: double; border-width: 4px; }
button.small { min-height: 2.75rem; font-weight: 500; font-size: .9375rem; border: 0; background: none; padding: .25rem .5rem; margin-left: -.5rem; text-decoration: underline; text-underline-offset: 3px; min-width: 2.75rem; }
a { color: var(--rule); text-underline-offset: 3px; }
code { font-family: ui-monospace, 'Cascadia Mono', 'Noto Sans Mono', monospace; background: var(--tint); padding: 0 .25em; border-radius: 3px; }
hr { border: 0; border-top: 1px solid var(--line); margin: .625rem 0; width: 100%; }
img { max-width: 100%; height: auto; border: 1px solid var(--line); border-radius: 4px; background: var(--sheet); display: block; }

.side { padding: .75rem 1rem 0; display: grid; gap: .625rem; border-bottom: 2px solid var(--ink); padding-bottom: .75rem; }
.brand { display: flex; flex-wrap: wrap; gap: 0 .75rem; align-items: baseline; }
nav h2, .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
#sites { display: flex; flex-wrap: wrap; gap: .375rem; }
#sites a { display: flex; flex-wrap: wrap; align-items: center; gap: .125rem .5rem; min-height: 2.75rem; padding: .375rem .75rem; border: 2px solid var(--line); border-radius: 6px; color: var(--ink); text-decoration: none; background: var(--sheet); }
#sites a:hover { border-color: var(--ink); }
#sites a[aria-current] { border-color: var(--rule); background: var(--tint); font-weight: 700; box-shadow: inset .375rem 0 0 var(--rule); padding-left: 1rem; }
.tag { display: inline-block; font-size: .8125rem; font-weight: 600; line-height: 1.3; border: 1px solid currentColor; border-radius: 3px; padding: 0 .375rem; color: var(--quiet); }
.settings { border-top: 1px solid var(--line); }
.settings summary { min-height: 2.75rem; display: flex; flex-wrap: wrap; align-items: center; gap: 0 .5rem; cursor: pointer; font-weight: 700; list-style: none; }
.settings summary::before { content: '+'; width: 1em; text-align: center; }
.settings[open] summary::before { content: '−'; }
.settings summary::-webkit-details-marker { display: none; }
.settings legend { font-size: .9375rem; color: var(--quiet); padding-top: .375rem; }
.picks { display: flex; flex-wrap: wrap; gap: .25rem; }
.pick { position: relative; }
.pick input { position: absolute; inset: 0; opacity: 0; width: 100%; height: 100%; margin: 0; cursor: pointer; }
.pick span { display: flex; align-items: center; min-height: 2.75rem; padding: .25rem .75rem; border: 2px solid var(--line); border-radius: 6px; background: var(--sheet); }
.pick input:checked + span { border-color: var(--rule); background: var(--tint); font-weight: 700; }
.pick input:checked + span::before { content: '✓'; margin-right: .375rem; }
.pick input:focus-visible + span { outline: 3px solid var(--focus); outline-offset: 2px; }
.home > h2 button { width: 100%; text-align: left; border: 0; background: none; padding: .5rem 0; font-weight: 700; }
.home > h2 button::before { content: '+'; display: inline-block; width: 1em; text-align: center; margin-right: .5rem; }
.home > h2 button[aria-expanded=true]::before { content: '−'; }
#home-body { display: grid; gap: .5rem; padding-bottom: .5rem; }

main { flex: 1; display: flex; flex-direction: column; min-height: 0; min-width: 0; }
.site-head { display: grid; grid-template-columns: minmax(0, 1fr) auto auto; align-items: center; gap: 0 .75rem; position: sticky; top: 0; z-index: 1; background: var(--paper); padding: .5rem 1rem; border-bottom: 1px solid var(--line); }
.site-head h2 { font-size: 1.1875rem; }
.site-head p { grid-area: 2 / 1 / 3 / 3; line-height: 1.3; }
.to-home { grid-area: 2 / 3; justify-self: end; display: inline-flex; align-items: center; min-height: 2.75rem; font-weight: 600; }
.site-head button { grid-area: 1 / 2 / 2 / 4; justify-self: end; min-height: 2.75rem; padding: .25rem .75rem; font-size: .9375rem; line-height: 1.25; }
#log { flex: 1; padding: .5rem 1rem 1rem; }
.day { padding: .75rem 0 0; font-weight: 700; color: var(--quiet); }
.none { padding: 1rem 0; }
.message { display: grid; grid-template-columns: 100%; gap: .25rem; padding: .75rem 0 .375rem; border-bottom: 1px solid var(--line); }
.message > header { display: flex; flex-wrap: wrap; gap: .125rem .625rem; align-items: baseline; }
.who { font-weight: 700; }
.message > header time { color: var(--quiet); font-variant-numeric: tabular-nums; }
.body { display: grid; grid-template-columns: minmax(0, 1fr); gap: .5rem; }
.from-seamhand > .body { border-left: 5px solid var(--rule); padding-left: .75rem; }
.alone > .body { background: var(--alone); border-left: 5px dashed var(--alone-line); padding: .625rem .75rem; }
.from-room > .body { font-weight: 600; }
.free { white-space: pre-wrap; }
.typed { font-family: ui-monospace, 'Cascadia Mono', 'Noto Sans Mono', monospace; white-space: pre-wrap; }
.replies { margin: .25rem 0 0 .25rem; padding-left: .875rem; border-left: 2px solid var(--line); }
.replies .message:last-child { border-bottom: 0; }
.block-head { font-size: 1.1875rem; line-height: 1.3; }
.block-section { display: grid; gap: .5rem; justify-items: start; }
.fields { display: grid; gap: .375rem 1rem; }
.block-context { display: flex; flex-wrap: wrap; gap: .25rem .75rem; color: var(--quiet); font-size: .9375rem; align-items: center; }
.block-context img { max-height: 1.5rem; width: auto; }
.block-section .fields { width: 100%; }
.block-actions { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; }
figcaption { color: var(--quiet); font-size: .9375rem; display: flex; flex-wrap: wrap; align-items: center; gap: 0 .75rem; }
figure > img { cursor: zoom-in; }
figcaption button.small { margin-left: -.5rem; }
.file { display: inline-flex; align-items: center; min-height: 2.75rem; font-weight: 600; }

.trouble { color: var(--warn); background: var(--warn-tint); font-weight: 600; padding: .5rem 1rem; }
.trouble:empty { display: none; }
.composer { position: sticky; bottom: 0; z-index: 1; background: var(--paper); border-top: 2px solid var(--ink); padding: .625rem 1rem max(.625rem, env(safe-area-inset-bottom)); box-shadow: 0 .5rem 0 var(--paper); }
.write { display: grid; grid-template: 'text text' auto 'photo send' auto / auto 1fr; gap: .5rem; align-items: end; }
.write textarea { grid-area: text; }
.write .attach { grid-area: photo; }
.write .main { grid-area: send; justify-self: end; min-width: 9rem; }
.write textarea { width: 100%; resize: none; }
.attach { position: relative; }
.attach input { position: absolute; inset: 0; opacity: 0; width: 100%; height: 100%; cursor: pointer; }
.attach span { display: flex; align-items: center; }
.attach input:focus-visible + span { outline: 3px solid var(--focus); outline-offset: 2px; }
.replying { display: flex; flex-wrap: wrap; align-items: center; gap: .5rem; padding-bottom: .25rem; color: var(--quiet); }
#suggestions { max-height: 40dvh; overflow-y: auto; border: 2px solid var(--ink); border-radius: 6px; background: var(--sheet); margin-bottom: .5rem; }
#suggestions li { padding: .5rem .75rem; min-height: 2.75rem; cursor: pointer; border-bottom: 1px solid var(--line); }
#suggestions li:last-child { border-bottom: 0; }
#suggestions li[aria-selected=true] { background: var(--tint); box-shadow: inset .375rem 0 0 var(--rule); }

dialog { width: min(36rem, calc(100vw - 1.5rem)); max-height: calc(100dvh - 1.5rem); overflow-y: auto; border: 3px solid var(--ink); border-radius: 8px; background: var(--paper); color: var(--ink); padding: 1.125rem; }
dialog::backdrop { background: rgb(0 0 0 / .55); }
dialog h2 { font-size: 1.25rem; margin-bottom: .75rem; }
dialog form, .field, .group { display: grid; gap: .375rem; grid-template-columns: minmax(0, 1fr); }
dialog form { gap: 1rem; }
dialog form h2 { margin: 0; }
.field > label, .field > legend { font-weight: 700; }
.field [aria-invalid=true] { border-color: var(--warn); border-width: 3px; }
.wrong { color: var(--warn); font-weight: 600; }
.wrong:empty { display: none; }
.tick { display: flex; gap: .625rem; align-items: center; min-height: 2.75rem; }
.tick input { width: 1.5rem; height: 1.5rem; flex: none; accent-color: var(--rule); }
.tick small { display: block; }
.form-end { display: flex; flex-wrap: wrap; justify-content: flex-end; gap: .625rem; margin-top: .25rem; }
.form-end button { min-width: 7rem; }
dialog .trouble { border-radius: 4px; }

#zoom { width: min(84rem, calc(100vw - 1.5rem)); height: calc(100dvh - 1.5rem); overflow: hidden; }
#zoom[open] { display: flex; flex-direction: column; gap: .625rem; }
.dialog-head { display: grid; grid-template-columns: minmax(0, 1fr) auto; align-items: start; gap: .25rem .75rem; }
.dialog-head h2 { margin: .375rem 0 0; }
.zoom-tools { display: flex; flex-wrap: wrap; gap: .5rem; }
.zoom-tools button { min-width: 3.5rem; }
.frame { flex: 1; min-height: 0; overflow: auto; border: 2px solid var(--line); border-radius: 6px; background: var(--sheet); touch-action: pan-x pan-y pinch-zoom; }
.frame img { max-width: none; width: 100%; margin: 0 auto; border: 0; border-radius: 0; cursor: zoom-in; }

#whatif { width: min(52rem, calc(100vw - 1.5rem)); }
#whatif h2 { margin-bottom: 0; }
.supposed { color: var(--quiet); font-size: .9375rem; padding: .375rem 0 .75rem; }
.instant { position: sticky; top: -1.125rem; z-index: 1; background: var(--paper); padding: .5rem 0; border-bottom: 1px solid var(--line); display: grid; gap: .25rem; }
.instant-row { display: flex; flex-wrap: wrap; gap: 0 .75rem; justify-content: space-between; font-variant-numeric: tabular-nums; }
.instant input { width: 100%; height: 2.75rem; margin: 0; accent-color: var(--rule); cursor: pointer; }
.week { display: grid; grid-template-columns: repeat(7, minmax(0, 1fr)); text-align: center; font-size: .875rem; color: var(--quiet); }
.week span + span { border-left: 1px solid var(--line); }
.instant-steps { display: flex; flex-wrap: wrap; gap: .5rem; padding-top: .25rem; }
.instant-steps button { flex: 1 1 auto; padding-inline: .375rem; font-size: .9375rem; }
#whatif-told { padding-top: .75rem; }
.told { display: grid; grid-template-columns: minmax(0, 1fr); gap: .5rem; border: 2px dashed var(--quiet); border-radius: 6px; padding: .75rem; margin-bottom: .75rem; }
.told h3 { font-size: 1rem; color: var(--quiet); }
#whatif-told[aria-busy=true] { opacity: 1; cursor: auto; }

@media (prefers-reduced-motion: reduce) {
  *, ::before, ::after { animation: none !important; transition: none !important; scroll-behavior: auto !important; }
}
@media (max-width: 559px) { .brand p { display: none; } }
@media (min-width: 900px) {
  body { display: grid; grid-template-columns: 22rem minmax(0, 1fr); height: 100dvh; }
  .side { overflow-y: auto; border-bottom: 0; border-right: 2px solid var(--ink); align-content: start; padding-top: 1rem; }
  #sites { display: grid; grid-template-columns: minmax(0, 1fr); }
  nav h2 { position: static; width: auto; height: auto; clip-path: none; padding-bottom: .375rem; }
  main { height: 100dvh; }
  #log { overflow-y: auto; min-height: 0; padding-inline: 1.5rem; }
  .site-head, .composer { padding-inline: 1.5rem; }
  .site-head p { grid-column: 1 / 2; }
  .site-head button { grid-row: 1 / span 2; }
  .to-home { display: none; }
  .message { grid-template-columns: 8.5rem minmax(0, 46rem); column-gap: 1rem; }
  .message > header { grid-row: 1 / span 3; display: grid; align-content: start; justify-items: start; }
  .message > footer, .message > .replies { grid-column: 2; }
  .replies .message { grid-template-columns: minmax(0, 1fr); }
  .replies .message > header { display: flex; grid-row: auto; }
  .replies .message > footer { grid-column: 1; }
  .fields { grid-template-columns: 1fr 1fr; }
  .write { max-width: 56rem; grid-template: 'photo text send' auto / auto 1fr auto; }
  .write .main { min-width: 0; }
}
`
