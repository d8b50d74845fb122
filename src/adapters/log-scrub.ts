type Fields = Record<string, unknown>

/** Members that say who somebody is or hold what was said: never logged, whatever is in them. */
const silent: ReadonlySet<string> = new Set(['user', 'person', 'author', 'name', 'text', 'body', 'token', 'authorization', 'password', 'secret'])

/** What is cut out of any text: tokens, addresses with a password or a key, e-mail addresses, people's ids. */
const cuts: readonly (readonly [RegExp, string])[] = [
  [/\bx(?:ox[a-z]|app)[-.][\w.-]+/gi, 'token…'],
  [/\bBearer\s+\S+/gi, 'Bearer …'],
  [/\b([a-z][a-z0-9+.-]*:\/\/)[^\s/@]+@/gi, '$1…@'],
  [/\bhttps:\/\/hooks\.\S+/gi, 'https://hooks…'],
  [/([?&](?:api_?key|key|token|code|state|secret)=)[^&\s]+/gi, '$1…'],
  [/[\w.+-]+@[\w-]+(?:\.[\w-]+)+/g, '…@…'],
  [/\b[UW][A-Z0-9]{5,}\b/g, 'U…'],
  // PostgreSQL repeats the values of a row.
  [/(Key \([^)]*\)=)\(.*?\)/g, '$1(…)'],
  // A parser repeats what it could not read.
  [/"(?:[^"\\]|\\.){24,}"/g, '"…"']
]

const longest = 2000

/** The fields of a line without what must not be in it. */
export function scrubbed(fields: Fields): Fields {
  return Object.fromEntries(
    Object.entries(fields)
      .filter(([key]) => !silent.has(key))
      .map(([key, value]) => [key, scrub(value, 4)])
  )
}

function scrub(value: unknown, depth: number): unknown {
  if (typeof value === 'string') return scrubText(value)
  if (value instanceof Error) return errorFields(value)
  if (typeof value !== 'object' || value === null) return value
  if (depth === 0) return '…'
  if (Array.isArray(value)) return value.map((each) => scrub(each, depth - 1))
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => !silent.has(key))
      .map(([key, each]) => [key, scrub(each, depth - 1)])
  )
}

function scrubText(text: string): string {
  return cuts.reduce((left, [found, put]) => left.replace(found, put), text.slice(0, longest))
}

/** Of an error its kind, its code, what it says and where: none of the other members that drivers and clients put on theirs. */
function errorFields(error: unknown, depth = 3): Fields {
  if (!(error instanceof Error)) return { message: scrubText(String(error)) }
  const { code, errcode, cause } = error as Error & { readonly code?: unknown; readonly errcode?: unknown }
  return {
    type: error.name,
    message: scrubText(error.message),
    ...(typeof code === 'string' ? { code } : {}),
    ...(typeof errcode === 'number' ? { errcode } : {}),
    stack: scrubText(
      (error.stack ?? '')
        .split('\n')
        .filter((line) => /^\s+at /.test(line))
        .join('\n')
    ),
    ...(cause === undefined || depth === 0 ? {} : { cause: errorFields(cause, depth - 1) })
  }
}
