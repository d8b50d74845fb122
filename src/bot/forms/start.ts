import { defaultSettings } from '../../core/site.js'
import { textField, ticksField } from './fields.js'
import { type Form, labelled, textOf, ticked } from './form.js'
import { settingFields, settingPhrases, settingValues } from './parts/settings.js'

/** A new site, with all that it needs: filled with what is usual, the person's language and units, and a zone that is known. */
export const start: Form = {
  command: 'start',
  blocks: (text, known) => {
    const { fields: f } = text.talk
    return [
      textField('name', f.siteName, false, f.siteNameHint),
      textField('at', f.latLon, false, f.latLonHint),
      textField('zone', f.zone, false, f.zoneHint),
      ...(known.channelFree ? [ticksField('here', f.here, [['here', f.hereYes]])] : []),
      ...settingFields(text, known)
    ]
  },
  fills: ({ lang, units, zone, channelFree }) => ({
    ...settingValues({ ...defaultSettings, lang, units }),
    zone,
    here: channelFree ? ['here'] : null
  }),
  phrases: (values, opened) => [
    { block: 'name', words: textOf(values, 'name') },
    ...labelled(values, 'at', 'at'),
    ...labelled(values, 'zone', 'zone'),
    ...(ticked(values, 'here').length > 0 && opened.channel !== null ? [{ block: 'here', words: `channel ${opened.channel}` }] : []),
    ...settingPhrases(values, opened, () => true)
  ],
  sound: { name: 'site-0', at: 'at 50.0,8.0', zone: 'zone Europe/Berlin' }
}
