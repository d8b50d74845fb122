import { createHash } from 'node:crypto'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Duplex } from 'node:stream'
import type { Loose } from './slack.js'

/** The service's end of Socket Mode: a web socket (RFC 6455, as much of it as is needed) that sends envelopes and keeps what comes back. */
export interface SocketService {
  readonly url: string
  readonly acks: Loose[]
  readonly connections: () => number
  send(envelope: Loose): void
  /** Cuts the connection. */
  drop(): void
  close(): Promise<void>
}

const guid = '258EAFA5-E914-47DA-95CA-C5AB0DC85B11'

export async function startSocketService(): Promise<SocketService> {
  const acks: Loose[] = []
  let count = 0
  let open: Duplex | null = null
  const server = createServer()
  server.on('upgrade', (req, socket: Duplex) => {
    const accept = createHash('sha1').update(`${req.headers['sec-websocket-key']}${guid}`).digest('base64')
    socket.write(`HTTP/1.1 101 Switching Protocols\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Accept: ${accept}\r\n\r\n`)
    socket.on('error', () => {})
    count += 1
    open = socket
    let rest: Buffer = Buffer.alloc(0)
    socket.on('data', (part: Buffer) => {
      rest = frames(Buffer.concat([rest, part]), socket, acks)
    })
    socket.write(frame(1, JSON.stringify({ type: 'hello', num_connections: 1, connection_info: { app_id: 'A0' } })))
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    url: `ws://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    acks,
    connections: () => count,
    send: (envelope) => void open?.write(frame(1, JSON.stringify(envelope))),
    drop: () => void open?.destroy(),
    close: () => {
      open?.destroy()
      return new Promise((resolve) => server.close(() => resolve()))
    }
  }
}

function frame(opcode: number, text: string | Buffer): Buffer {
  const body = Buffer.from(text)
  const head = body.length < 126 ? Buffer.from([0x80 | opcode, body.length]) : Buffer.from([0x80 | opcode, 126, body.length >> 8, body.length & 255])
  return Buffer.concat([head, body])
}

/** Takes whole frames off the front; what is left waits for more. */
function frames(data: Buffer, socket: Duplex, acks: Loose[]): Buffer {
  let rest = data
  while (rest.length >= 6) {
    const short = rest[1]! & 127
    const long = short === 126
    const length = long ? rest.readUInt16BE(2) : short
    const start = long ? 8 : 6
    if (rest.length < start + length) break
    const mask = rest.subarray(start - 4, start)
    const body = Buffer.from(rest.subarray(start, start + length).map((byte, i) => byte ^ mask[i % 4]!))
    const opcode = rest[0]! & 15
    if (opcode === 1) acks.push(JSON.parse(body.toString('utf8')))
    if (opcode === 8) socket.end(frame(8, body))
    if (opcode === 9) socket.write(frame(10, body))
    rest = rest.subarray(start + length)
  }
  return rest
}
