import { createRequire } from 'node:module'
import type * as Bolt from '@slack/bolt'

/**
 * The parts of the framework that are used, each from its own file: the package's index loads the receivers for Express and Lambda
 * too, and with them sixty files of Express, a twentieth of the time from start to the first answer. The version is pinned, and
 * `bolt.test.ts` holds that these are the very things of the index.
 */
const load = createRequire(import.meta.url)
const loadBesides = createRequire(load.resolve('@slack/bolt'))
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
