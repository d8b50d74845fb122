import type { Activity, Group } from './finding.js'
import { type RuleId, rules } from './rules/index.js'
import type { Rule } from './rules/rule.js'

/** One rule at work for one activity. */
export interface Judge {
  readonly rule: RuleId
  readonly activity: Activity
  readonly group: Group
  readonly check: Rule['check']
}

export type Judges = Readonly<Record<Activity, readonly Judge[]>>

/** In order of rule, the last thing that findings are sorted by. */
const ids = (Object.keys(rules) as RuleId[]).sort()

/** Who judges an activity, people among them, in order of rule. */
export const judges: Judges = {
  spray: judgesOf(['spray', 'people']),
  lay: judgesOf(['lay', 'people']),
  weld: judgesOf(['weld', 'people']),
  people: judgesOf(['people'])
}

/** The same without the checklist. */
export const weatherJudges: Judges = {
  spray: ofWeather(judges.spray),
  lay: ofWeather(judges.lay),
  weld: ofWeather(judges.weld),
  people: ofWeather(judges.people)
}

function judgesOf(list: readonly Activity[]): Judge[] {
  return ids.flatMap((rule) => {
    const { judges: groups, check }: Rule = rules[rule]
    return list.flatMap((activity) => {
      const group = groups[activity]
      return group === undefined ? [] : [{ rule, activity, group, check }]
    })
  })
}

function ofWeather(list: readonly Judge[]): readonly Judge[] {
  return list.filter(({ group }) => group !== 'checklist')
}
