export const lapWords = {
  en: 'lap(,s) side_lap(,s)',
  es: 'traslape(,s) solape(,s) traslape_lateral solape_longitudinal',
  fr: 'recouvrement(,s) recouvrement_longitudinal'
}
