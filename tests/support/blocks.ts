/**
 * Limits of Block Kit as the documentation of the chat service states them (comments of @slack/types 3.2, and the same numbers in
 * the Python SDK's validators): 50 blocks, section 3,000, header 150, field 2,000 (10 of them), context 10 elements, actions 25,
 * button 75, action_id and block_id 255. All block text together stays under 10,000: more was refused in practice (bolt-js#2867).
 */
const limits = {
  blocks: 50,
  section: 3000,
  header: 150,
  field: 2000,
  fields: 10,
  context: 10,
  actions: 25,
  button: 75,
  id: 255,
  together: 10_000,
  text: 3000
} as const

type Loose = Readonly<Record<string, unknown>>

interface Check {
  readonly problems: string[]
  letters: number
}

/** Every way in which a message breaks the limits or leaves raw markup; empty when it may be sent. */
export function blockProblems(message: { readonly text: string; readonly blocks: readonly object[] }): readonly string[] {
  const check: Check = { problems: [], letters: 0 }
  if (message.text.trim() === '') check.problems.push('text is empty')
  if ([...message.text].length > limits.text) check.problems.push(`text has ${[...message.text].length} characters`)
  markup(message.text, 'text', check)
  if (message.blocks.length === 0 || message.blocks.length > limits.blocks) check.problems.push(`${message.blocks.length} blocks`)
  for (const [i, block] of message.blocks.entries()) oneBlock(block as Loose, `blocks[${i}]`, check)
  if (check.letters > limits.together) check.problems.push(`${check.letters} characters of block text together`)
  return check.problems
}

function oneBlock(block: Loose, path: string, check: Check): void {
  keys(block, { section: ['text', 'fields'], header: ['text'], context: ['elements'], divider: [], actions: ['elements'] }, path, check)
  if (block.type === 'section') section(block, path, check)
  if (block.type === 'header') textObject(block.text as Loose, ['plain_text'], limits.header, path, check)
  if (block.type === 'context') elements(block, limits.context, path, check)
  if (block.type === 'actions') elements(block, limits.actions, path, check)
}

function section(block: Loose, path: string, check: Check): void {
  if (block.text === undefined && block.fields === undefined) check.problems.push(`${path} is an empty section`)
  if (block.text !== undefined) textObject(block.text as Loose, ['plain_text', 'mrkdwn'], limits.section, path, check)
  const fields = (block.fields ?? []) as readonly Loose[]
  if (fields.length > limits.fields) check.problems.push(`${path} has ${fields.length} fields`)
  for (const field of fields) textObject(field, ['plain_text', 'mrkdwn'], limits.field, `${path}.fields`, check)
}

function elements(block: Loose, most: number, path: string, check: Check): void {
  const list = (block.elements ?? []) as readonly Loose[]
  if (list.length === 0 || list.length > most) check.problems.push(`${path} has ${list.length} elements`)
  for (const element of list) {
    if (element.type === 'button') {
      textObject(element.text as Loose, ['plain_text'], limits.button, path, check)
      if (typeof element.action_id !== 'string' || element.action_id.length > limits.id) check.problems.push(`${path} has no good action_id`)
    } else textObject(element, ['plain_text', 'mrkdwn'], limits.section, path, check)
  }
}

function textObject(text: Loose | undefined, types: readonly string[], most: number, path: string, check: Check): void {
  if (text === undefined || !types.includes(String(text.type))) {
    check.problems.push(`${path} has no ${types.join(' or ')}`)
    return
  }
  const said = String(text.text)
  const letters = [...said].length
  check.letters += letters
  if (said.trim() === '') check.problems.push(`${path} is blank`)
  if (letters > most || said.length > most) check.problems.push(`${path} has ${letters} characters of ${most}`)
  const known = text.type === 'mrkdwn' ? ['type', 'text', 'verbatim'] : ['type', 'text', 'emoji']
  for (const key of Object.keys(text)) if (!known.includes(key)) check.problems.push(`${path} text has ${key}`)
  if (text.type === 'mrkdwn') markup(said, path, check)
}

/** Nothing that pings, links or formats by itself: our own words use none of it. */
function markup(said: string, path: string, check: Check): void {
  if (/[<>]/.test(said)) check.problems.push(`${path} has a raw < or >`)
  if (/&(?!amp;|lt;|gt;)/.test(said)) check.problems.push(`${path} has a raw &`)
  if (/:\/\//.test(said)) check.problems.push(`${path} has a link`)
  if (/[*~`]/.test(said)) check.problems.push(`${path} has formatting`)
  if (/undefined|null|NaN|\[object/.test(said)) check.problems.push(`${path} says ${said}`)
}

function keys(block: Loose, known: Readonly<Record<string, readonly string[]>>, path: string, check: Check): void {
  const own = known[String(block.type)]
  if (own === undefined) {
    check.problems.push(`${path} is of type ${String(block.type)}`)
    return
  }
  for (const key of Object.keys(block)) if (!['type', 'block_id', ...own].includes(key)) check.problems.push(`${path} has ${key}`)
}
