import type { PersonRole } from '../answer.js'

/** Setting up: a first site, and who may do what. */
export interface BeginWords {
  /** The head of an answer. */
  readonly start: string
  made(site: string): string
  /** How to, in one line that runs. */
  readonly how: string
  /** What the chat service opens. */
  readonly form: string
  firstPost(kind: string, at: string): string
  readonly noPost: string
  readonly invite: string
  readonly afterwards: string
  role(person: string, role: string): string
  named(person: string, role: string): string
  readonly roles: Readonly<Record<PersonRole, string>>
  supervisors(list: string): string
  /** Where somebody is named that the chat service did not give: how to name one, and who is known. */
  known(list: string): string
  readonly noSupervisor: string
  /** Who can, where a person may not. */
  askOne(list: string): string
  readonly lastSupervisor: string
}
