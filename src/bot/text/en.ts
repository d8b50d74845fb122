import { decision } from './en/decision.js'
import { findings } from './en/findings.js'
import { fixes } from './en/fixes.js'
import { frame } from './en/frame.js'
import { labels } from './en/labels.js'
import { parts } from './en/parts.js'
import { refusal } from './en/refusal.js'
import type { Text } from './text.js'

export const en: Text = { ...frame, ...decision, ...parts, findings, fixes, labels, refusal }
