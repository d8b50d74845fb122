const entities: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>' }

/**
 * What a person typed: the service escapes three characters, wraps links and addresses in angle brackets, and names channels by id. No
 * bracket holds another: a text of nothing but opened ones is not looked through anew from each.
 */
export function typedText(text: string): string {
  const unwrapped = text
    .replace(/<(?:https?:|mailto:|tel:)[^|<>]*\|([^<>]*)>/g, '$1')
    .replace(/<((?:https?:|mailto:|tel:)[^<>]*)>/g, '$1')
    .replace(/<#([A-Z0-9]+)(?:\|[^<>]*)?>/g, '$1')
  return unwrapped.replace(/&(?:amp|lt|gt);/g, (entity) => entities[entity] ?? entity).trim()
}

/** The words of a mention, without the mention of the bot itself. */
export function withoutMention(text: string, botUserId: string): string {
  return text
    .replaceAll(/<@([A-Z0-9]+)(?:\|[^<>]*)?>/g, (mention, id) => (id === botUserId ? ' ' : mention))
    .replace(/\s+/g, ' ')
    .trim()
}

/** `/spray` with `air 20` is `spray air 20`; `/seamhand` alone asks for help. */
export function commandText(command: string, text: string): string {
  const name = command.replace(/^\//, '').toLowerCase()
  const rest = typedText(text)
  if (name === 'seamhand') return rest === '' ? 'help' : rest
  return rest === '' ? name : `${name} ${rest}`
}
