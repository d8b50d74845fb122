import type { RoomOptions, Timing } from './types.js'

/**
 * The service's own spans: 3 s to answer, a trigger of 3 s, a reply address of 5 uses in 30 min, events again at once, after 1 and
 * after 5 min, one post a second and channel (its documentation; the size of the burst and the time of a file are from memory).
 */
const service: Timing = {
  deadlineMs: 3000,
  triggerMs: 3000,
  hookMs: 1_800_000,
  hookUses: 5,
  retryMs: [0, 60_000, 300_000],
  fileMs: 700,
  postsPerS: 1,
  postBurst: 5
}

export interface Settings extends Required<Omit<RoomOptions, 'timing'>> {
  readonly timing: Timing
}

export function settingsOf(options: RoomOptions): Settings {
  return {
    ...options,
    events: options.events ?? ['app_mention', 'message.im', 'app_home_opened'],
    shortcuts: options.shortcuts ?? [],
    lang: options.lang ?? 'en',
    whatIf: options.whatIf ?? null,
    timing: { ...service, ...options.timing }
  }
}
