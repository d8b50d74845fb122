const roles = ['crew', 'supervisor', 'inspector'] as const
type RoomRole = (typeof roles)[number]

export interface RoomPerson {
  readonly id: string
  readonly role: RoomRole
  readonly name: string
}

/** The three people of the local room: invented, with ids in the service's shape. */
export const roomPeople: readonly RoomPerson[] = [
  { id: 'U0CREW', role: 'crew', name: 'Crew' },
  { id: 'U0SUPERVISOR', role: 'supervisor', name: 'Supervisor' },
  { id: 'U0INSPECTOR', role: 'inspector', name: 'Inspector' }
]

/** Ids of the room's workspace, its app and its bot. */
export const roomIds = { team: 'T0ROOM', app: 'A0SEAMHAND', bot: 'B0SEAMHAND', botUser: 'U0SEAMHAND', room: 'U0ROOM' } as const

export function personByRole(role: unknown): RoomPerson | null {
  return roomPeople.find((person) => person.role === role) ?? null
}

export function personById(id: unknown): RoomPerson | null {
  return roomPeople.find((person) => person.id === id) ?? null
}

/** Word for an author in the page's data: a role, `seamhand` or `room`. */
export function wordFor(id: string): string {
  if (id === roomIds.botUser) return 'seamhand'
  return personById(id)?.role ?? 'room'
}
