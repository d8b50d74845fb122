import { dayPicture } from './fr/day-picture.js'
import { decision } from './fr/decision.js'
import { findings } from './fr/findings.js'
import { fixes } from './fr/fixes.js'
import { frame } from './fr/frame.js'
import { labels } from './fr/labels.js'
import { parts } from './fr/parts.js'
import { posts } from './fr/posts.js'
import { refusal } from './fr/refusal.js'
import { talk } from './fr/talk.js'
import { toSay } from './fr/to-say.js'
import type { Text } from './text.js'

export const fr: Text = { ...frame, ...decision, ...parts, ...posts, dayPicture, findings, fixes, labels, refusal, talk, toSay }
