import type { Words } from '../forms.js'

/** What is done on a roof, and with what. */
export const workWords = {
  spray: {
    en: 'spray spraying glue gluing glueing bond_down stick',
    es: 'rociar rociando rociamos pulverizar pegar pegando pegamos espumar aplicar encolar',
    fr: 'pulvériser projeter coller encoller pulvérise colle projection collage'
  },
  foam: { en: 'foam foaming adhesive', es: 'espuma adhesivo', fr: 'mousse adhésif' },
  openTime: {
    en: 'open_time working_time pot_life',
    es: 'tiempo_abierto tiempo_de_trabajo',
    fr: 'temps_ouvert temps_de_travail'
  },
  weld: {
    en: 'weld welding',
    es: 'soldar soldando soldamos',
    fr: 'souder soude soudage'
  },
  /** Welds that are there already: how they are is never answered by whether one may weld. */
  made: {
    en: 'the_weld the_welds this_weld that_weld our_welds',
    es: 'soldadura soldaduras',
    fr: 'soudure soudures'
  },
  seam: {
    en: 'seam seams lap laps side_lap side_laps',
    es: 'costura costuras traslape traslapes solape solapes',
    fr: 'recouvrement recouvrements couture coutures'
  },
  joint: { en: 'joint joints end_joint end_joints', es: 'junta juntas', fr: "joint joints joint_d'about joints_d'about" },
  lay: {
    en: 'lay laying lay_down unroll unrolling roll_out rolling_out put_down handle handling carry spread',
    es: 'colocar desenrollar extender tender manejar colocamos poner ponemos',
    fr: 'poser dérouler étaler manipuler déroule'
  },
  sheet: { en: 'sheet sheets membrane', es: 'lámina láminas membrana', fr: 'feuille feuilles membrane' },
  roof: {
    en: 'roof deck substrate surface board boards insulation',
    es: 'techo cubierta azotea sustrato soporte superficie tablero losa',
    fr: 'toit toiture support terrasse surface panneau panneaux isolant dalle'
  },
  robot: { en: 'robot machine', es: 'robot automática máquina soldadora_automática', fr: 'automate' },
  hand: {
    en: 'hand hand_gun hand_welder heat_gun hand_tool',
    es: 'mano pistola pistola_de_aire_caliente soldadora_manual',
    fr: 'main soudeuse_manuelle chalumeau_à_air pistolet'
  },
  welder: { en: 'welder welders', es: 'soldadora soldadoras soldador soldadores', fr: 'soudeuse soudeuses soudeur soudeurs' },
  coupon: {
    en: 'coupon coupons test_weld test_welds test_seam test_piece weld_test',
    es: 'probeta probetas prueba_de_soldadura soldadura_de_prueba muestra_de_soldadura',
    fr: "éprouvette éprouvettes soudure_d'essai essai_de_soudure essais_de_soudure"
  },
  cleared: {
    en: 'cleared approved released lapsed valid qualified',
    es: 'aprobad(o,a,os,as) habilitad(o,a,os,as) autorizad(o,a,os,as) liberad(o,a,os,as) válid(o,a) vigente vencid(o,a)',
    fr: 'validé(,e,s,es) autorisé(,e,s,es) libéré(,e,s,es) valable(,s) approuvé(,e,s,es)'
  },
  hold: { en: 'on_hold held metres_on_hold meters_on_hold', es: 'en_espera retenid(o,a,os,as)', fr: 'en_attente retenu(,e,s,es)' },
  chart: { en: 'chart control_chart graph', es: 'gráfico gráfica', fr: 'graphique courbe' },
  start: {
    en: 'start begin starting get_started get_going',
    es: 'empezar comenzar arrancar empezamos',
    fr: 'commencer démarrer débuter attaquer commence'
  },
  stop: {
    en: 'stop stopping finish knock_off quit pack_up close_up holding_up',
    es: 'parar terminar acabar recoger paramos impide',
    fr: "arrêter finir terminer remballer arrête empêche bloque s'arrêter"
  },
  last: { en: 'last latest', es: 'últim(o,a,os,as)', fr: 'dernier dernière derniers dernières' },
  kit: {
    en: 'kit kits drum drums pail pails iso resin part_a part_b',
    es: 'kit kits juego juegos tambor tambores bidón bidones cubeta cubetas resina componente componentes',
    fr: 'trousse trousses bidon bidons fût fûts résine composant composants'
  },
  use: {
    en: 'use using next first',
    es: 'usar usamos uso sigue siguiente primero toca',
    fr: 'prendre prend prends utiliser utilise suivant suivante premier première'
  },
  ready: { en: 'ready usable', es: 'list(o,a,os,as)', fr: 'prêt(,e,s,es)' },
  void: {
    en: 'void voids hole holes bad_spot bad_spots cold_weld cold_welds defect defects leak_spot failed_spot failed_spots miss misses',
    es: 'falla fallas poro poros defecto defectos soldadura_fría soldaduras_frías',
    fr: 'défaut défauts manque_de_soudure manques_de_soudure soudure_froide soudures_froides trou trous'
  },
  open: { en: 'open unfixed unrepaired', es: 'abiert(o,a,os,as) sin_reparar sin_arreglar', fr: 'ouvert(,e,s,es) non_réparé(,s)' },
  fix: {
    en: 'fix fixed fixing repair repaired redo mend patch_up',
    es: 'reparar reparad(o,a,os,as) arreglar arreglad(o,a,os,as)',
    fr: 'réparer réparé(,e,s,es) reprendre repris refaire'
  },
  strip: {
    en: 'strip strips cover_strip cover_strips',
    es: 'tira tiras banda bandas cubrejunta cubrejuntas tira_cubrejunta tiras_cubrejunta',
    fr: 'bande bandes bande_de_recouvrement bandes_de_recouvrement bande_de_pontage bandes_de_pontage'
  },
  gap: { en: 'gap', es: 'hueco separación', fr: 'écart jeu' },
  wide: { en: 'wide width', es: 'ancho anchura', fr: 'large largeur' },
  long: { en: 'long length', es: 'largo longitud mide medir', fr: 'long longueur mesure' },
  cut: { en: 'cut', es: 'cortar corto corta cortamos', fr: 'couper coupe' },
  roll: { en: 'roll rolls', es: 'rollo rollos', fr: 'rouleau rouleaux' },
  layout: {
    en: 'layout takeoff materials material sheet_plan',
    es: 'medición cuantificación materiales material despiece',
    fr: 'métré calepinage matériel matériaux plan_de_pose'
  },
  laid: {
    en: 'laid did_we_lay have_we_laid welded',
    es: 'colocamos_hoy pusimos colocad(o,a,os,as) hemos_colocado soldad(o,a,os,as)',
    fr: 'posé(,es) a_posé avons_posé a_soudé avons_soudé'
  },
  metres: { en: 'metres meters feet square_metres square_feet', es: 'metros pies metros_cuadrados', fr: 'mètres pieds mètres_carrés' }
} as const satisfies Record<string, Words>
