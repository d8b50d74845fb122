import { adhesiveDate } from './adhesive-date.js'
import { airTemperature } from './air-temperature.js'
import { cold } from './cold.js'
import { compatibility } from './compatibility.js'
import { coupon } from './coupon.js'
import { daylight } from './daylight.js'
import { deckMoisture } from './deck-moisture.js'
import { dewMargin } from './dew-margin.js'
import { fleeceDry } from './fleece-dry.js'
import { heat } from './heat.js'
import { humidity } from './humidity.js'
import { ice } from './ice.js'
import { intakes } from './intakes.js'
import { kitMixed } from './kit-mixed.js'
import { kitTemperature } from './kit-temperature.js'
import { lapClean } from './lap-clean.js'
import { power } from './power.js'
import { rainComing } from './rain-coming.js'
import { rainNow } from './rain-now.js'
import type { Rule } from './rule.js'
import { seamDry } from './seam-dry.js'
import { sheetRelaxed } from './sheet-relaxed.js'
import { startUp } from './start-up.js'
import { substrateClean } from './substrate-clean.js'
import { substrateDry } from './substrate-dry.js'
import { substrateTemperature } from './substrate-temperature.js'
import { thunder } from './thunder.js'
import { trafficWait } from './traffic-wait.js'
import { windGust } from './wind-gust.js'
import { windMean } from './wind-mean.js'

/** Every rule by its id: conditions, checklist, people. A new rule is one file and one line here. */
export const rules = {
  'kit-temperature': kitTemperature,
  'air-temperature': airTemperature,
  'substrate-temperature': substrateTemperature,
  'dew-margin': dewMargin,
  humidity,
  'rain-now': rainNow,
  'rain-coming': rainComing,
  'wind-mean': windMean,
  'wind-gust': windGust,
  daylight,
  'substrate-dry': substrateDry,
  'fleece-dry': fleeceDry,
  'seam-dry': seamDry,
  'substrate-clean': substrateClean,
  'lap-clean': lapClean,
  compatibility,
  intakes,
  'deck-moisture': deckMoisture,
  'sheet-relaxed': sheetRelaxed,
  'kit-mixed': kitMixed,
  'adhesive-date': adhesiveDate,
  'start-up': startUp,
  coupon,
  power,
  'traffic-wait': trafficWait,
  thunder,
  heat,
  cold,
  ice
} as const satisfies Record<string, Rule>

export type RuleId = keyof typeof rules
