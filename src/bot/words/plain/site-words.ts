import type { Words } from '../forms.js'

/** Weather, people, papers and what closes a day. */
export const siteWords = {
  dry: {
    en: 'dry dries dried drying dry_off dry_out wet',
    es: 'sec(o,a,os,as) seca_ya secar secarse secan secará secado mojad(o,a,os,as) seque sequen',
    fr: 'sec secs sèche sèches sécher séchera sèchera séché mouillé(,e,s,es) séchage'
  },
  humid: { en: 'humid humidity damp muggy moist', es: 'humedad húmed(o,a,os,as)', fr: 'humide(,s) humidité' },
  wind: { en: 'wind windy gust gusts gusty blowing', es: 'viento vientos racha rachas ventoso', fr: 'vent rafale rafales' },
  cold: { en: 'cold freezing chilly', es: 'frí(o,a,os,as) helado', fr: 'froid(,e,s,es) gelé' },
  hot: { en: 'hot heat', es: 'calor', fr: 'chaleur canicule' },
  warm: {
    en: 'warm warm_up warmed warming heated heat_up warmer temperature temp up_to_temperature up_to_temp',
    es: 'caliente calientes calentar calentarse calientan calienta calienten tibi(o,a,os,as) temperatura a_temperatura',
    fr: 'chaud(,e,s,es) réchauffer chauffer réchauffé(,e,s,es) réchauffent tiède(,s) température à_température'
  },
  people: {
    en: 'crew men guys boys lads people workers team',
    es: 'gente cuadrilla equipo trabajadores muchachos',
    fr: 'gars équipe ouvriers monde'
  },
  safe: { en: 'safe dangerous', es: 'segur(o,a) peligros(o,a)', fr: 'dangereux sécurité risqué' },
  work: { en: 'work working up_there be_up stay_up', es: 'trabajar trabajando estar_arriba subir', fr: 'travailler travaille bosser monter' },
  rain: {
    en: 'rain raining rains shower showers',
    es: 'lluvia lluvias llover llueve lloviendo lloverá aguacero agua',
    fr: 'pluie pluies pleuvoir pleut pleuvra averse averses'
  },
  thunder: {
    en: 'thunder lightning storm storms thunderstorm',
    es: 'tormenta tormentas rayos trueno truenos',
    fr: 'orage orages tonnerre foudre éclairs'
  },
  dew: { en: 'dew', es: 'rocío', fr: 'rosée' },
  falls: { en: 'fall falls falling form forms coming down drop', es: 'cae caer caiga baja forma', fr: 'tombe tomber tombera arrive' },
  sun: {
    en: 'sunset sunrise sundown dark daylight light',
    es: 'atardecer puesta_del_sol oscurece anochece amanece amanecer luz',
    fr: 'coucher_du_soleil lever_du_soleil nuit lumière jour_se_lève'
  },
  outlook: {
    en: 'window windows forecast weather outlook plan slot hours hour spell',
    es: 'ventana ventanas pronóstico clima plan pinta horario rato tiempo horas hora',
    fr: 'fenêtre fenêtres créneau créneaux prévisions prévision météo plan programme heures heure donne_quoi temps'
  },
  punch: {
    en: 'punch punch_list punchlist snag snags snag_list to-do',
    es: 'lista_de_pendientes pendiente pendientes',
    fr: 'réserve réserves liste_de_réserves liste_des_réserves'
  },
  /** Whether the day may end: everything that stands open is the answer. */
  over: {
    en: 'go_home left_to_do still_to_do left_for_today we_done all_done done_for_today done_for_the_day close_the_day close_out_the_day wrap_up wrap-up',
    es: 'por_cerrar por_hacer cerrar_el_día cerrar_la_jornada irnos ir_a_casa irnos_a_casa a_casa nos_vamos terminamos acabamos hemos_terminado',
    fr: 'rentrer rentrer_chez_nous partir à_faire à_fermer a_fini avons_fini fermer_la_journée clore_la_journée'
  },
  fire: { en: 'fire', es: 'fuego incendio', fr: 'feu incendie' },
  watch: {
    en: 'fire_watch watch',
    es: 'vigilancia vigilar guardia vigilancia_de_fuego guardia_de_fuego',
    fr: 'surveillance ronde surveiller surveillance_incendie'
  },
  seal: {
    en: 'night_seal seal sealed drains drain tie-in watertight closed_up',
    es: 'cierre cierre_nocturno sellado sellad(o,a) desagüe desagües',
    fr: "joint_de_nuit évacuation évacuations raccord hors_d'eau étanche mise_hors_d'eau"
  },
  bond: {
    en: 'bond bond_test pull_test test_square adhesion adhesion_test',
    es: 'adherencia prueba_de_adherencia cuadro_de_prueba',
    fr: "adhérence essai_d'adhérence essai_d'arrachement carré_d'essai"
  },
  detail: { en: 'detail details corner corners', es: 'detalle detalles esquina esquinas', fr: 'détail détails angle angles' },
  check: {
    en: 'check checked checks looked_at result results done',
    es: 'revisar revisad(o,a,os,as) resultado hech(o,a,os,as)',
    fr: 'vérifier vérifié(,e,s,es) contrôler résultat'
  },
  record: {
    en: 'record report log logbook day_record daily_report',
    es: 'registro informe reporte bitácora registro_del_día',
    fr: 'relevé rapport journal registre relevé_du_jour'
  },
  csv: { en: 'csv spreadsheet table', es: 'hoja_de_cálculo tabla', fr: 'tableur tableau' },
  day: { en: 'day', es: 'día jornada', fr: 'jour journée' },
  site: { en: 'site settings', es: 'obra ajustes configuración', fr: 'chantier réglages paramètres' },
  help: {
    en: 'help commands command what_can_you_do what_can_i_ask how_does_this_work how_do_i_use guide',
    es: 'ayuda comandos qué_puedes_hacer qué_sabes_hacer qué_puedo_preguntar cómo_funciona guía',
    fr: 'aide commandes que_sais-tu_faire que_peux-tu_faire comment_ça_marche qu’est-ce_que_tu_sais_faire mode_d’emploi'
  },
  speech: { en: 'language units', es: 'idioma unidades', fr: 'langue unités' }
} as const satisfies Record<string, Words>
