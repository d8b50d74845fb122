import { Document, isScalar, isSeq, type Scalar } from 'yaml'
import { manifestOf, scopes } from './manifest.js'

/** The manifest as YAML, each scope with its reason. */
export function manifestYaml(url: string | null): string {
  const document = new Document(manifestOf(url))
  document.commentBefore = url === null ? socketNote : ` Deliveries over HTTP to ${url}.`
  const list = document.getIn(['oauth_config', 'scopes', 'bot'])
  if (isSeq(list)) for (const [index, item] of list.items.entries()) explain(item, index)
  return document.toString({ lineWidth: 0 })
}

const socketNote =
  " Socket Mode: no public address. The app-level token (scope connections:write) is made on the app's own page.\n For HTTP: seamhand manifest --url https://your.host"

function explain(item: unknown, index: number): void {
  if (isScalar(item)) (item as Scalar).comment = ` ${scopes[index]?.why ?? ''}`
}
