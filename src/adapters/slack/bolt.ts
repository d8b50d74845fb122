import { createRequire, Module } from 'node:module'
import type * as Bolt from '@slack/bolt'

/**
 * The parts of the framework that are used, each from its own file, and without what a start over HTTP has no use for: the receivers
 * for Express and Lambda, which the package's index loads, the clients of Socket Mode and OAuth, and forty files of types that hold
 * next to nothing when they run. These are three hundred files,
 * a quarter of the time from start to the first answer. The version is pinned; `bolt.test.ts` holds that these are the very things
 * of the index.
 */
const load = createRequire(import.meta.url)
const loadBesides = createRequire(load.resolve('@slack/bolt'))
for (const name of ['@slack/socket-mode', '@slack/oauth', '@slack/types']) loadWhenUsed(loadBesides.resolve(name))

type Errors = Pick<typeof Bolt, 'AuthorizationError' | 'RespondError'>

export const App = load('@slack/bolt/dist/App').default as typeof Bolt.App
export const HTTPReceiver = load('@slack/bolt/dist/receivers/HTTPReceiver').default as typeof Bolt.HTTPReceiver
export const SocketModeReceiver = load('@slack/bolt/dist/receivers/SocketModeReceiver').default as typeof Bolt.SocketModeReceiver
export const HTTPModuleFunctions = load('@slack/bolt/dist/receivers/HTTPModuleFunctions') as typeof Bolt.HTTPModuleFunctions
export const { AuthorizationError, RespondError } = load('@slack/bolt/dist/errors') as Errors
export const { LogLevel } = loadBesides('@slack/logger') as Pick<typeof Bolt, 'LogLevel'>
export const webApi = loadBesides('@slack/web-api') as typeof Bolt.webApi

export type App = Bolt.App
export type HTTPReceiver = Bolt.HTTPReceiver
export type SocketModeReceiver = Bolt.SocketModeReceiver
export type LogLevel = Bolt.LogLevel

/** The receivers require both packages and make something of them only when they are told to: what stands in loads the real one then. */
function loadWhenUsed(file: string): void {
  if (load.cache[file] !== undefined) return
  const standIn = new Module(file)
  const real = (): object => {
    if (load.cache[file] === standIn) delete load.cache[file]
    return load(file) as object
  }
  standIn.exports = new Proxy({}, { get: (_none, name) => Reflect.get(real(), name) })
  load.cache[file] = Object.assign(standIn, { filename: file, loaded: true })
}
