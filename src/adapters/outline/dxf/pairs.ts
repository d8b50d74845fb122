/** A group of a drawing: what the value means, and the value. */
export interface Group {
  readonly code: number
  readonly value: string
}

/** One entity: its type and the groups that follow, up to the next. */
export interface Entity {
  readonly type: string
  readonly groups: readonly Group[]
}

/** What a drawing holds of interest here. */
export interface Drawing {
  /** $INSUNITS of its header; null: not said. */
  readonly units: number | null
  readonly entities: readonly Entity[]
}

/**
 * An ASCII drawing: a code and a value line by line, sections of them, EOF at the end (the DXF reference that its maker publishes).
 * Null for whatever is not whole. Blocks are not followed.
 */
export function readDrawing(text: string): Drawing | null {
  const groups = groupsOf(text)
  return groups === null ? null : { units: unitsOf(groups), entities: entitiesOf(sectionOf(groups, 'ENTITIES')) }
}

function groupsOf(text: string): readonly Group[] | null {
  const lines = text.split(/\r\n|\r|\n/)
  const groups: Group[] = []
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = (lines[i] as string).trim()
    if (!/^-?\d{1,4}$/.test(code)) return null
    const group = { code: Number(code), value: (lines[i + 1] as string).trim() }
    if (group.code === 0 && group.value === 'EOF') return groups
    groups.push(group)
  }
  return null
}

/** The groups between a section's name and its end; empty where there is no such section. */
function sectionOf(groups: readonly Group[], name: string): readonly Group[] {
  const start = groups.findIndex(({ code, value }, i) => code === 2 && value === name && groups[i - 1]?.value === 'SECTION')
  if (start < 0) return []
  const rest = groups.slice(start + 1)
  const end = rest.findIndex(({ code, value }) => code === 0 && value === 'ENDSEC')
  return end < 0 ? rest : rest.slice(0, end)
}

function unitsOf(groups: readonly Group[]): number | null {
  const header = sectionOf(groups, 'HEADER')
  const name = header.findIndex(({ code, value }) => code === 9 && value === '$INSUNITS')
  const units = name < 0 ? undefined : header[name + 1]
  return units === undefined || units.code !== 70 ? null : Number(units.value)
}

function entitiesOf(groups: readonly Group[]): readonly Entity[] {
  const entities: { readonly type: string; readonly groups: Group[] }[] = []
  for (const group of groups) {
    if (group.code === 0) entities.push({ type: group.value, groups: [] })
    else entities.at(-1)?.groups.push(group)
  }
  return entities
}
