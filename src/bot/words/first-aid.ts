import { fold } from './fold.js'

/** Words, folded, that somebody may be hurt. Better once too often than not at all. */
const hurt: ReadonlySet<string> = new Set(
  [
    'burn burns burned burnt burning eye eyes hurt hurts injured injury bleeding fainted fell breathe dizzy',
    'quema queman quemo queme quemadura quemaduras ojo ojos herido herida herir sangra sangre respirar mareado mareo desmayo cayo',
    'brulure brulures brule brulee yeux oeil blesse blessee saigne sang respirer vertige evanoui tombe tombee'
  ].flatMap((words) => words.split(' '))
)

/** Whether a message that was not understood may be about somebody hurt: then help comes before any usage. */
export function mayBeHurt(text: string): boolean {
  return fold(text.slice(0, 2000))
    .split(/[^a-z]+/)
    .some((word) => hurt.has(word))
}
