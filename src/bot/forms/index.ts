import { checklist } from './checklist.js'
import { coupon } from './coupon.js'
import { detail } from './detail.js'
import type { Form } from './form.js'
import type { FormId } from './form-id.js'
import { kit } from './kit.js'
import { laid } from './laid.js'
import { punch } from './punch.js'
import { readings } from './readings.js'
import { seal } from './seal.js'
import { site } from './site.js'
import { start } from './start.js'
import { voidForm } from './void.js'

/** Every form by its id, which is its callback id too. */
export const forms: Readonly<Record<FormId, Form>> = { checklist, readings, kit, coupon, void: voidForm, laid, seal, detail, punch, site, start }
