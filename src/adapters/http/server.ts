import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'

/** Answers a request; false when it was not its own. */
export type Handler = (req: IncomingMessage, res: ServerResponse) => Promise<boolean> | boolean

export interface Listening {
  /** `http://HOST:PORT`. */
  readonly base: string
  /** Takes no more, waits for what was accepted. */
  close(): Promise<void>
}

/** The port is taken, or the host is not this machine's: a sentence for the operator. */
export class ListenError extends Error {
  override readonly name = 'ListenError'
}

/** One HTTP server for everything; handlers are asked in order. Throws a ListenError. */
export async function listen(host: string, port: number, handlers: readonly Handler[], failed: (error: unknown) => void): Promise<Listening> {
  const server = createServer((req, res) => {
    answer(handlers, req, res).catch((error: unknown) => {
      failed(error)
      if (!res.headersSent) sendJson(res, 500, { error: 'internal' })
      else res.destroy()
    })
  })
  await opened(server, host, port)
  const { port: taken } = server.address() as AddressInfo
  return { base: `http://${host.includes(':') ? `[${host}]` : host}:${taken}`, close: () => closed(server) }
}

async function answer(handlers: readonly Handler[], req: IncomingMessage, res: ServerResponse): Promise<void> {
  for (const handler of handlers) if (await handler(req, res)) return
  sendJson(res, 404, { error: 'not-found' })
}

function opened(server: Server, host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => reject(new ListenError(reason(error, host, port))))
    server.listen(port, host, resolve)
  })
}

function reason(error: NodeJS.ErrnoException, host: string, port: number): string {
  if (error.code === 'EADDRINUSE') return `port ${port} on ${host} is taken by another program: set PORT, 0 picks a free one`
  if (error.code === 'EACCES') return `port ${port} on ${host} may not be used by this user: set PORT`
  return `cannot listen on ${host} port ${port}: ${error.message}`
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve())
    server.closeIdleConnections()
  })
}

export function sendJson(res: ServerResponse, status: number, body: object): void {
  res.writeHead(status, { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' })
  res.end(JSON.stringify(body))
}
