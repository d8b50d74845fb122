import type { InputBlock, KnownBlock, PlainTextOption } from '@slack/types'
import type { FormValues } from '../../talk/talk.js'

/** Blocks with what is known in their fields; a value that a field cannot hold is left out. */
export function fill(blocks: readonly KnownBlock[], values: FormValues): KnownBlock[] {
  return blocks.map((block) => {
    const value = block.type === 'input' ? (values[block.block_id ?? ''] ?? null) : null
    return value === null || block.type !== 'input' ? block : { ...block, element: filled(block.element, value) }
  })
}

type Element = InputBlock['element']

function filled(element: Element, value: string | readonly string[]): Element {
  const one = typeof value === 'string' ? value : (value[0] ?? '')
  switch (element.type) {
    case 'number_input':
    case 'plain_text_input':
      return one === '' ? element : { ...element, initial_value: one }
    case 'datepicker':
      return one === '' ? element : { ...element, initial_date: one }
    case 'timepicker':
      return one === '' ? element : { ...element, initial_time: one }
    case 'radio_buttons':
    case 'static_select':
      return withOption(element, one)
    case 'checkboxes': {
      const ticked = element.options.filter((option) => value.includes(option.value ?? ''))
      return ticked.length === 0 ? element : { ...element, initial_options: ticked }
    }
    default:
      return element
  }
}

function withOption<E extends Extract<Element, { type: 'radio_buttons' | 'static_select' }>>(element: E, value: string): E {
  const option = (element.options as readonly PlainTextOption[] | undefined)?.find((each) => each.value === value)
  return option === undefined ? element : { ...element, initial_option: option }
}
