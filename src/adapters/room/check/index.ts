import type { Loose } from '../types.js'
import { asObject, type Check, onlyKeys, optionalString, optionalText, problem, text } from './basics.js'
import { blocks } from './blocks.js'

/** The service's error for a payload, with its messages; null when it may pass. */
export interface Refused {
  readonly error: string
  readonly messages: readonly string[]
}

type FileReady = (id: unknown) => boolean

/** All block text of a message together; above it the service says msg_blocks_too_long (undocumented, seen at about 13,200: bolt-js#2509). */
const together = 13_000

export function checkMessage(value: unknown, fileReady: FileReady): Refused | null {
  const check = newCheck('message', fileReady)
  blocks(check, value, '/blocks', 50)
  if (check.problems.length > 0) return { error: 'invalid_blocks', messages: check.problems }
  return check.letters > together ? { error: 'msg_blocks_too_long', messages: [] } : null
}

export function checkView(value: unknown, type: 'modal' | 'home', fileReady: FileReady): Refused | null {
  const check = newCheck(type, fileReady)
  const view = asObject(check, value, '/view')
  if (view !== null) lookAtView(check, view, type)
  if (check.problems.length > 0) return { error: 'invalid_arguments', messages: check.problems }
  return Buffer.byteLength(JSON.stringify(value)) > 250 * 1024 ? { error: 'view_too_large', messages: [] } : null
}

function newCheck(surface: Check['surface'], fileReady: FileReady): Check {
  return { problems: [], letters: 0, surface, fileReady, blockIds: new Set() }
}

function lookAtView(check: Check, view: Loose, type: 'modal' | 'home'): void {
  if (view.type !== type) problem(check, '/view/type', `must be ${type}`)
  const shared = ['type', 'blocks', 'private_metadata', 'callback_id', 'external_id']
  onlyKeys(
    check,
    view,
    type === 'home' ? shared : [...shared, 'title', 'submit', 'close', 'clear_on_close', 'notify_on_close', 'submit_disabled'],
    '/view'
  )
  if (view.private_metadata !== '') optionalString(check, view.private_metadata, '/view/private_metadata', 3000)
  if (view.callback_id !== '') optionalString(check, view.callback_id, '/view/callback_id', 255)
  if (view.external_id !== '') optionalString(check, view.external_id, '/view/external_id', 255)
  blocks(check, view.blocks, '/view/blocks', 100)
  if (type === 'home') return
  text(check, view.title, '/view/title', 24, 'plain_text')
  optionalText(check, view.submit, '/view/submit', 24)
  optionalText(check, view.close, '/view/close', 24)
  const asks = Array.isArray(view.blocks) && view.blocks.some((block) => (block as Loose | null)?.type === 'input')
  if (asks && view.submit === undefined) problem(check, '/view', 'missing required field: submit')
}

/** Blocks and their elements without an id of their own get one, as the service gives them. */
export function withIds(value: unknown): readonly Loose[] {
  if (!Array.isArray(value)) return []
  return value.map((block: Loose, i) => {
    const id = block.block_id ?? `block${i + 1}`
    const elements = block.type === 'actions' ? { elements: (block.elements as readonly Loose[]).map((one, n) => named(one, n)) } : {}
    const accessory = block.accessory === undefined ? {} : { accessory: named(block.accessory as Loose, 0) }
    const element = block.element === undefined ? {} : { element: named(block.element as Loose, 0) }
    return { ...block, block_id: id, ...elements, ...accessory, ...element }
  })
}

function named(element: Loose, n: number): Loose {
  return element.type === 'image' || element.action_id !== undefined ? element : { ...element, action_id: `action${n + 1}` }
}
