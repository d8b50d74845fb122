import type { Words } from '../forms.js'

/** Words that say how something is asked, not what: they never decide which command is meant. */
export const littleWords = {
  aux: { en: 'is are am do does will should would could shall was any', es: '', fr: '' },
  can: { en: 'can may', es: 'podemos puedo podríamos podría pueden se_puede se_podrá puede', fr: 'peut peux pouvons puis pourra pourrait peuvent' },
  what: {
    en: 'what who whose which where why anyone anybody anything',
    es: 'qué quién quiénes cuál cuáles dónde por_qué cómo alguien',
    fr: 'que qui quel quelle quels quelles où pourquoi comment quoi lequel laquelle lesquels lesquelles'
  },
  when: {
    en: 'when what_time how_soon until_what_time',
    es: 'cuándo a_qué_hora qué_hora hasta_cuándo hasta_qué_hora desde_cuándo',
    fr: "quand quelle_heure à_quelle_heure jusqu'à_quelle_heure vers_quelle_heure dans_combien_de_temps jusqu'à_quand"
  },
  howLong: {
    en: 'how_long how_much_time how_much_longer how_many_hours how_many_minutes',
    es: 'cuánto_tiempo cuántas_horas cuántos_minutos cuánto_falta cuánto_tarda cuánto_tardan',
    fr: "combien_de_temps combien_d'heures combien_de_minutes"
  },
  howMuch: { en: 'how_many how_much', es: 'cuánt(o,a,os,as) qué_cantidad', fr: 'combien combien_de quelle_quantité' },
  show: {
    en: 'show list give tell get see',
    es: 'lista_de muestra muéstrame enséñame dame dime pásame pasas ver quiero',
    fr: 'montre montrez affiche donne donnez dis dites liste voir avoir'
  },
  if: {
    en: 'if unless without after before instead although through past except',
    es: 'si sin después antes salvo aunque',
    fr: 'si sans après avant sauf malgré'
  },
  filler: {
    en: 'a an the this that these those there here it its i we you they them he she me us our my your to of for in on at with from by up out off and or be been have has had got go going gonna s t ll re ve d m n please ok okay fine good clear right now yet still already just enough too very much more so then as about till until soon please exactly isn aren don doesn won haven hasn hi hey all over into today_then long_now come comes keep says say look looks like doing how around about did make made lot lots some bit long_enough any_more anymore even really another new next_up happen happens way think know',
    es: 'el la los las un una unos unas lo le les me te se nos mi tu su nuestro nuestra este esta estos estas ese esa esto eso de del al a en con por para y o es son está están ser estar hay haber ha han va van vamos voy tiene tienen tengo tenemos tener ya ahora ahorita todavía aún muy más demasiado bastante suficiente mucho mucha poco bien ok posible hace hasta desde entre hoy_mismo favor por_favor oye aquí allí ahí arriba tan muchas muchos dice dicen estén sean entonces alguna alguno algún tal así hora_mismo me_da todavia lo_mismo mientras ustedes nosotros todo toda todos todas momento otra otro nueva nuevo vez debo debemos puesto',
    fr: "le la les un une des du de d l au aux à en dans sur avec pour par et ce cet cette ces ça c y a on nous je j il ils elle elles vous tu te me se s mon ma mes ton ta notre nos votre vos est sont être était ai as ont avons avez va vais vont fait font faire ne n qu est-ce il_y_a y_a-t-il y_a t ok bon bonne bien maintenant déjà encore toujours assez trop très plus moins pas_trop tout tous toute toutes ici là là-haut haut svp s'il_vous_plaît s'il_te_plaît moment possible doit autre autres soient dit disent ensuite alors donc cela encore_une votre leur leurs celui celle ceux fort forte peu dois devons sera seront soit m jusqu jusque même tant"
  },
  not: { en: 'not no cannot nothing none', es: 'no nada ninguna ninguno', fr: 'pas rien aucun aucune' },
  need: {
    en: 'need needs needed take takes want wants must require order buy use_up reason',
    es: 'necesito necesitamos necesita necesitan hace_falta hacen_falta falta_para hay_que lleva llevan comprar pedir',
    fr: 'faut faudra besoin nécessaire prévoir commander acheter manque'
  },
  left: {
    en: 'left remaining remain remains pending outstanding',
    es: 'queda quedan falta faltan restante restantes',
    fr: 'reste restent restant restants restante restantes'
  },
  today: { en: 'today', es: 'hoy', fr: "aujourd'hui" },
  tomorrow: { en: 'tomorrow', es: 'mañana', fr: 'demain' },
  part: {
    en: 'morning afternoon evening tonight noon lunch later',
    es: 'esta_mañana por_la_mañana tarde noche mediodía luego esta_tarde esta_noche',
    fr: 'matin après-midi soir midi tantôt plus_tard'
  },
  otherDay: {
    en: 'yesterday monday tuesday wednesday thursday friday saturday sunday week weekend month',
    es: 'ayer lunes martes miércoles jueves viernes sábado domingo semana este_mes próximo_mes',
    fr: 'hier lundi mardi mercredi jeudi vendredi samedi dimanche semaine mois'
  }
} as const satisfies Record<string, Words>
