import { expect, it } from 'vitest'
import { createStore } from '../../../src/adapters/store/store.js'
import { forEachDatabase } from '../../support/databases.js'

forEachDatabase((open) => {
  /** Two servers on one database. */
  async function two(name: string) {
    return [createStore(await open(name)), createStore(await open(name))] as const
  }

  it('has one first supervisor, whoever speaks on however many servers at once', async () => {
    const servers = await two('first')
    for (let round = 0; round < 10; round += 1) {
      const people = ['U1', 'U2', 'U3', 'U4']
      const claimed = await Promise.all(people.map((id, i) => (servers[i % 2] as (typeof servers)[0]).claimSupervisor(`T${round}`, id)))
      const supervisors = (await servers[0].supervisors(`T${round}`)).map(({ id }) => id)
      expect(supervisors).toEqual(people.filter((_id, i) => claimed[i]))
      expect(supervisors).toHaveLength(1)
      expect(await servers[1].claimSupervisor(`T${round}`, supervisors[0] as string)).toBe(true)
    }
    expect(await servers[0].hasSupervisor('T10')).toBe(false)
  })

  it('keeps one of two supervisors who take each other off at once', async () => {
    const [one, other] = await two('last')
    for (let round = 0; round < 10; round += 1) {
      const workspace = `T${round}`
      await one.nameRole(workspace, 'U1', 'supervisor')
      await one.nameRole(workspace, 'U2', 'supervisor')
      const done = await Promise.all([one.nameRole(workspace, 'U1', 'crew'), other.nameRole(workspace, 'U2', 'inspector')])
      expect(done.filter((each) => each)).toHaveLength(1)
      expect(await one.supervisors(workspace)).toHaveLength(1)
    }
  })
})
