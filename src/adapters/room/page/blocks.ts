/** Drawing of the blocks of a message, a form or the home. */
export const blocksScript = `
import { control, figure, picture } from './elements.js'
import { said } from './markup.js'
import { make, t } from './talk.js'

const draw = {
  header: (block, level) => make('h' + level, { class: 'block-head' }, ...said(block.text)),
  divider: () => make('hr'),
  context: (block) => make('div', { class: 'block-context' }, ...block.elements.map((one) => (one.type === 'image' ? picture(one) : make('p', {}, ...said(one))))),
  image: (block) => figure(picture(block), block.title?.text ?? ''),
  section: (block, _level, act) =>
    make('div', { class: 'block-section' },
      block.text ? make('p', {}, ...said(block.text)) : null,
      block.fields ? make('ul', { class: 'fields' }, ...block.fields.map((field) => make('li', {}, ...said(field)))) : null,
      block.accessory ? (block.accessory.type === 'image' ? figure(picture(block.accessory), '') : control(block.accessory, block, act)) : null),
  actions: (block, _level, act) => make('div', { class: 'block-actions' }, ...block.elements.map((element) => control(element, block, act)))
}

/** act(action, button) is called with the service's own shape of an action. */
export function drawBlocks(blocks, level, act) {
  return blocks.map((block) => (draw[block.type] ? draw[block.type](block, level, act) : make('p', { class: 'quiet' }, t('cannotShow', { type: block.type }))))
}
`
