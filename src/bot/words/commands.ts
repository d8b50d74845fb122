import { air } from './vocabularies/air.js'
import { bond } from './vocabularies/bond.js'
import { correct } from './vocabularies/correct.js'
import { day } from './vocabularies/day.js'
import { detail } from './vocabularies/detail.js'
import { fire } from './vocabularies/fire.js'
import { foam } from './vocabularies/foam.js'
import { help } from './vocabularies/help.js'
import { kit } from './vocabularies/kit.js'
import { laid } from './vocabularies/laid.js'
import { me } from './vocabularies/me.js'
import { probe } from './vocabularies/probe.js'
import { punch } from './vocabularies/punch.js'
import { role } from './vocabularies/role.js'
import { seal } from './vocabularies/seal.js'
import { sheets } from './vocabularies/sheets.js'
import { site } from './vocabularies/site.js'
import { spray } from './vocabularies/spray.js'
import { start } from './vocabularies/start.js'
import { strip } from './vocabularies/strip.js'
import { undo } from './vocabularies/undo.js'
import { weld } from './vocabularies/weld.js'
import type { Grammar } from './walk.js'

/** How each command is read. */
export const grammars: Readonly<Record<string, Grammar>> = {
  spray,
  air,
  weld,
  strip,
  sheets,
  probe,
  kit,
  foam,
  laid,
  bond,
  seal,
  fire,
  detail,
  punch,
  day,
  site,
  start,
  role,
  help,
  me,
  undo,
  correct
}
