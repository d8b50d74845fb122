/** A picture as large as one likes: by buttons, keys, wheel or fingers. Escape closes, and the focus goes back where it was. */
export const zoomScript = `
import { make, t } from './talk.js'

const dialog = document.getElementById('zoom')
const step = 1.5
const most = 6
let scale = 1
let shown = null

/** The scale at which all of it is seen; 1 is the width of the frame. */
function whole(frame) {
  return Math.min(1, (frame.clientHeight / frame.clientWidth) * (shown.naturalWidth / shown.naturalHeight) || 1)
}

/** Keeps the middle of what is seen where it is. */
function setScale(next, frame) {
  const before = scale
  scale = Math.min(most, Math.max(whole(frame), next))
  const midX = (frame.scrollLeft + frame.clientWidth / 2) / before
  const midY = (frame.scrollTop + frame.clientHeight / 2) / before
  shown.style.width = scale * 100 + '%'
  frame.scrollLeft = midX * scale - frame.clientWidth / 2
  frame.scrollTop = midY * scale - frame.clientHeight / 2
}

export function enlarge(img, name) {
  scale = 1
  shown = make('img', { src: img.src, alt: img.alt })
  const frame = make('div', { class: 'frame', tabindex: '0', role: 'group', 'aria-label': t('picture') }, shown)
  const tool = (word, run, sign = null) => make('button', { type: 'button', 'aria-label': sign && t(word), onclick: run }, sign ?? t(word))
  frame.addEventListener('wheel', (event) => {
    if (!event.ctrlKey) return
    event.preventDefault()
    setScale(scale * (event.deltaY < 0 ? 1.1 : 1 / 1.1), frame)
  }, { passive: false })
  shown.addEventListener('dblclick', () => setScale(scale > 1 ? 0 : 2.25, frame))
  dialog.onkeydown = (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const next = { '+': scale * step, '=': scale * step, '-': scale / step, 0: 0 }[event.key]
    if (next !== undefined) { event.preventDefault(); setScale(next, frame) }
  }
  dialog.replaceChildren(
    make('header', { class: 'dialog-head' }, make('h2', { id: 'zoom-title' }, name), tool('close', () => dialog.close())),
    make('div', { class: 'zoom-tools' }, tool('larger', () => setScale(scale * step, frame), '+'), tool('smaller', () => setScale(scale / step, frame), '−'), tool('fit', () => setScale(0, frame))),
    frame)
  dialog.showModal()
  frame.focus()
}
`
