import { dayPicture } from './en/day-picture.js'
import { decision } from './en/decision.js'
import { findings } from './en/findings.js'
import { fixes } from './en/fixes.js'
import { frame } from './en/frame.js'
import { labels } from './en/labels.js'
import { parts } from './en/parts.js'
import { posts } from './en/posts.js'
import { refusal } from './en/refusal.js'
import { talk } from './en/talk.js'
import { toSay } from './en/to-say.js'
import type { Text } from './text.js'

export const en: Text = { ...frame, ...decision, ...parts, ...posts, dayPicture, findings, fixes, labels, refusal, talk, toSay }
