import { changed, type Form } from './form.js'
import { settingFields, settingPhrases, settingValues } from './parts/settings.js'

/** The settings of a site, filled with what is set: only what was changed is said. */
export const site: Form = {
  command: 'site',
  blocks: settingFields,
  fills: ({ settings }) => (settings === null ? {} : settingValues(settings)),
  phrases: (values, opened) => [
    { block: 'units', words: opened.site },
    ...settingPhrases(values, opened, (block) => changed(values, opened.was, block))
  ]
}
