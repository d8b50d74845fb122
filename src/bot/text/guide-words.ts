import type { CommandName } from './usages.js'

/** The page of a crew, by what is done one after another: its commands, and what hurts people there. */
export const guideSections = [
  { id: 'before', commands: ['day', 'air'], caution: 'edges' },
  { id: 'foam', commands: ['kit', 'foam', 'spray', 'laid'], caution: 'isocyanates' },
  { id: 'weld', commands: ['weld', 'probe'], caution: 'hotAir' },
  { id: 'strips', commands: ['strip'], caution: 'blade' },
  { id: 'evening', commands: ['detail', 'punch', 'seal', 'fire'], caution: null },
  { id: 'always', commands: ['undo', 'help'], caution: null }
] as const satisfies readonly { readonly id: string; readonly commands: readonly CommandName[]; readonly caution: string | null }[]

export type GuideSection = (typeof guideSections)[number]['id']

export interface GuideWords {
  readonly title: string
  readonly sections: Readonly<Record<GuideSection, string>>
  readonly ask: string
  /** Plain questions that may be typed as they stand. */
  readonly questions: readonly string[]
  /** Examples of the guide that differ from those of the commands: they can be typed on any site. */
  readonly examples: Readonly<Record<'undo' | 'fire' | 'help', string>>
}
