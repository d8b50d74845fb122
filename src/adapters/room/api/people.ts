import { DateTime } from 'luxon'
import { personById, roomIds } from '../people.js'
import type { Loose } from '../types.js'
import { fail, type Method, ok } from './answers.js'

const authTest: Method = async (world) =>
  ok({
    url: `${world.settings.base()}/`,
    team: 'Local room',
    user: 'seamhand',
    team_id: roomIds.team,
    user_id: roomIds.botUser,
    bot_id: roomIds.bot,
    is_enterprise_install: false
  })

const locales: Readonly<Record<string, string>> = { en: 'en-US', es: 'es-ES', fr: 'fr-FR' }

/** Locale and zone only as the service gives them: the locale when asked for, the zone of this machine. */
const userInfo: Method = async (world, args) => {
  const person = personById(args.user)
  if (person === null && args.user !== roomIds.botUser) return fail('user_not_found')
  const zone = DateTime.local().zoneName
  const { id, name, role } = person ?? { id: roomIds.botUser, name: 'Seamhand', role: 'seamhand' }
  const asked = args.include_locale === true || args.include_locale === 'true' || args.include_locale === '1'
  const locale: Loose = asked ? { locale: locales[world.asides.get(id)?.lang ?? 'en'] ?? 'en-US' } : {}
  return ok({
    user: {
      id,
      team_id: roomIds.team,
      name: role,
      real_name: name,
      deleted: false,
      is_bot: person === null,
      is_app_user: false,
      updated: 0,
      is_admin: role === 'supervisor',
      profile: { display_name: name, real_name: name },
      tz: zone,
      tz_label: zone,
      tz_offset: DateTime.fromMillis(world.settings.now(), { zone }).offset * 60,
      ...locale
    }
  })
}

export const people: Readonly<Record<string, Method>> = { 'auth.test': authTest, 'users.info': userInfo }
