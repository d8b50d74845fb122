import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'
import { still } from './still.js'

export const posts: Pick<Text, 'posts'> = {
  posts: {
    about: (activity, site, date) => `${activity}, ${site}, ${date}`,
    window: (hours, outcome) => `${hours} ${outcome}`,
    ends: (rule) => `après : ${rule}`,
    noWindow: (least) => `aucun créneau de ${least}`,
    noForecast: 'aucune prévision utilisable',
    binds: (finding) => `ce qui décide : ${finding}`,
    around: (at) => `vers ${theTime(at)}`,
    range: (name, low, high) => `${name} de ${low} à ${high}`,
    upTo: (name, high) => `${name} jusqu’à ${high}`,
    beforeWork: (readings) => `D’après la prévision seule. Avant de travailler : ${readings}`,
    kitCold: (air, limit) => `Trousses : l’air descend à ${air}, trousse au moins ${limit} : au caisson chauffant jusqu’à l’emploi`,
    kitHot: (air, limit) => `Trousses : l’air monte à ${air}, trousse au plus ${limit} : à l’ombre`,
    tomorrow: (head) => `Demain : ${head}`,
    nextDay: (head) => `Prochain jour de travail : ${head}`,
    boxNow: 'au caisson chauffant maintenant',
    wrapUp: (site, date) => `fin de journée, ${site}, ${date}`,
    open: (count) => `${count} encore en suspens`,
    nothingOpen: 'rien ne reste en suspens',
    nothingLaid: 'rien de posé aujourd’hui',
    tonight: (list) => `Cette nuit : ${list}`,
    rainAmount: (amount) => `pluie ${amount}`,
    anchor: (anchor) => `registre jusqu’ici : ${anchor}`,
    near: { rain: 'pluie imminente', gust: 'rafales imminentes', thunder: 'orage imminent' },
    turned: (activity, is, was) => `${activity} : ${is}, avant ${was}`,
    watch: 'veille météo',
    still,
    notSent: (count) => plural('fr', count, { one: `${count} message n’est pas parti`, other: `${count} messages ne sont pas partis` }),
    whyNotSent: 'Seamhand est-il dans le canal, et le canal existe-t-il encore ? Cherchés, et pas renvoyés.',
    summary: (sites, date) => `${counted('fr', sites, { one: 'chantier', many: 'de chantiers', other: 'chantiers' })}, ${date}`,
    summaryOff: 'Pour ne plus le recevoir : me sans résumé'
  }
}
