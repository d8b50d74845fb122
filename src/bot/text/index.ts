import type { Lang } from '../answer.js'
import { en } from './en.js'
import { es } from './es.js'
import { fr } from './fr.js'
import type { Text } from './text.js'

/** Every language. A new one is one file and one line here. */
export const texts: Readonly<Record<Lang, Text>> = { en, es, fr }
