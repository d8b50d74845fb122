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

/** A judge, and the place of its verdict among those asked once. */
export interface Seat {
  readonly judge: Judge
  readonly place: number
}

/** Judges of which each has another verdict, and where each activity finds its own among theirs. */
export interface AskedOnce {
  readonly asked: readonly Judge[]
  readonly seats: Readonly<Record<Activity, readonly Seat[]>>
}

/**
 * Who must be asked to know the verdicts of all activities at one instant: people are part of each, and a rule that takes no
 * activity (its check has two parameters) says the same of all.
 */
export function askedOnce(all: Judges): AskedOnce {
  const asked: Judge[] = []
  const sameOf = (one: Judge, other: Judge) => one.rule === other.rule && (one.activity === other.activity || one.check.length < 3)
  const seat = (judge: Judge): Seat => {
    const known = asked.findIndex((other) => sameOf(judge, other))
    return { judge, place: known < 0 ? asked.push(judge) - 1 : known }
  }
  const seated = (activity: Activity) => all[activity].map(seat)
  return { asked, seats: { spray: seated('spray'), lay: seated('lay'), weld: seated('weld'), people: seated('people') } }
}
