import * as index from '@slack/bolt'
import { expect, it } from 'vitest'
import * as parts from '../../../src/adapters/slack/bolt.js'

it('holds the very things that the index of the framework holds', () => {
  const { App, HTTPReceiver, SocketModeReceiver, AuthorizationError, RespondError, LogLevel } = index
  expect(parts).toMatchObject({ App, HTTPReceiver, SocketModeReceiver, AuthorizationError, RespondError, LogLevel })
  expect(parts.webApi.WebClient).toBe(index.webApi.WebClient)
  expect(parts.webApi.WebAPIRateLimitedError).toBe(index.webApi.WebAPIRateLimitedError)
  expect(parts.HTTPModuleFunctions.getHeader).toBe(index.HTTPModuleFunctions.getHeader)
})
