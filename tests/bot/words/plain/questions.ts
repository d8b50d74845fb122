import type { Said } from '../../../../src/bot/words/said.js'

/** Plain questions the grammar was written with: what each group asks for. Realistic talk of crews, common practice, no source. */
export const questions: readonly (readonly [asks: Said, phrasings: readonly string[]])[] = [
  [
    { command: 'spray', reading: {}, statement: {}, kit: null },
    [
      'can we start spraying now?',
      'are we ok to spray the foam?',
      'is it dry enough to glue?',
      'is it warm enough to spray?',
      'is it too humid to glue the sheets?',
      "why can't we spray?",
      'what do we still need to spray?',
      'can the crew spray yet?',
      'is there too much wind to spray?',
      'how long is the open time?',
      'is the adhesive good to go?',
      'anything stopping us from gluing?',
      '¿podemos empezar a pegar?',
      '¿hay demasiado viento para rociar?',
      '¿está bastante seco para pegar las láminas?',
      '¿qué falta para rociar?',
      '¿por qué no podemos pegar?',
      '¿hace bastante calor para la espuma?',
      '¿se puede aplicar el adhesivo ya?',
      '¿cuál es el tiempo abierto?',
      '¿la cuadrilla puede rociar?',
      "est-ce qu'on peut commencer à coller ?",
      'il y a trop de vent pour projeter la mousse ?',
      "c'est assez sec pour coller ?",
      'pourquoi on ne peut pas coller ?',
      "qu'est-ce qui manque pour pulvériser ?",
      'il fait assez chaud pour coller les feuilles ?',
      "l'équipe peut coller maintenant ?",
      "c'est quoi le temps ouvert ?",
      "trop d'humidité pour la mousse ?"
    ]
  ],
  [
    { command: 'air', reading: {}, statement: {} },
    [
      'is it too windy to unroll?',
      'is it too windy to work up there?',
      'can we carry sheets in this wind?',
      'is it safe to work on the roof?',
      'is it too hot to work?',
      'is it too cold for the guys?',
      'any lightning around?',
      'is the wind ok for laying sheets?',
      'are the gusts too much?',
      '¿hay demasiado viento para desenrollar?',
      '¿se puede trabajar en el techo?',
      '¿es peligroso subir?',
      '¿hace mucho calor para trabajar?',
      '¿hay tormenta?',
      '¿se pueden tender láminas con este viento?',
      '¿hay muchas rachas?',
      '¿hace demasiado frío para la cuadrilla?',
      'il y a trop de rafales pour dérouler ?',
      'on peut travailler sur le toit ?',
      "c'est dangereux de monter ?",
      'il fait trop chaud pour travailler ?',
      "trop froid pour l'équipe ?",
      "il y a de l'orage ?",
      'on peut dérouler les lés avec ce vent ?'
    ]
  ],
  [
    { command: 'weld', reading: {}, statement: {} },
    [
      'can we start welding?',
      'is it too cold to weld?',
      'are the seams dry enough to weld?',
      'is it too windy to weld the laps?',
      "why can't we weld?",
      'which welders are cleared?',
      'who needs a new coupon?',
      'do we need another test weld?',
      'how many metres are on hold?',
      'are the coupons still valid?',
      '¿se puede empezar la soldadura?',
      '¿hace mucho frío para soldar?',
      '¿están secas las juntas para soldar?',
      '¿por qué no podemos soldar?',
      '¿qué soldadoras están aprobadas?',
      '¿hace falta otra probeta?',
      '¿cuántos metros hay retenidos?',
      '¿hay demasiado viento para soldar los traslapes?',
      "est-ce qu'on peut commencer à souder ?",
      'il fait trop froid pour souder ?',
      'pourquoi on ne peut pas souder ?',
      'quelles soudeuses sont validées ?',
      'il faut une autre éprouvette ?',
      'combien de mètres sont en attente ?',
      'les joints sont assez secs pour souder ?',
      'trop de vent pour souder les recouvrements ?'
    ]
  ],
  [
    { command: 'weld show', welder: 'robot' },
    [
      'is the robot still cleared?',
      'does the robot need a coupon?',
      'can we use the robot?',
      '¿el robot sigue aprobado?',
      '¿el robot necesita una probeta?',
      '¿podemos usar el robot?',
      "l'automate est-il validé ?",
      "il faut une éprouvette pour l'automate ?",
      "on peut utiliser l'automate ?"
    ]
  ],
  [
    { command: 'weld show', welder: 'hand' },
    [
      'is the hand welder cleared?',
      'does the heat gun need a test weld?',
      '¿la pistola está aprobada?',
      '¿la pistola de aire caliente necesita probeta?',
      'la soudeuse manuelle est validée ?'
    ]
  ],
  [
    { command: 'weld show', welder: 'R2' },
    ['is welder R2 cleared?', 'does R2 need a coupon?', '¿la soldadora R2 está aprobada?', 'la soudeuse R2 est validée ?']
  ],
  [
    { command: 'weld chart', welder: 'robot' },
    ['show me the chart for the robot', 'muéstrame el gráfico del robot', "montre le graphique de l'automate"]
  ],
  [
    { command: 'day', date: null },
    [
      'is the roof dry yet?',
      'is the deck still wet?',
      'when will the deck be dry?',
      'how long till the roof dries?',
      'when can we start spraying?',
      'how long can we spray today?',
      'until what time can we lay sheets?',
      'what time is the last sheet?',
      'when do we have to stop?',
      'how long have we got left?',
      'will it rain today?',
      'when does the rain start?',
      'what time does the dew fall?',
      'when is sunset?',
      "what's the weather doing?",
      "what's the plan for today?",
      'any window this afternoon?',
      'can we spray this afternoon?',
      '¿ya está seco el techo?',
      '¿está mojada la cubierta?',
      '¿cuándo va a estar seco el soporte?',
      '¿cuánto tarda en secar la cubierta?',
      '¿cuándo podemos empezar a rociar?',
      '¿hasta qué hora podemos pegar?',
      '¿a qué hora va la última lámina?',
      '¿cuándo paramos?',
      '¿cuánto tiempo nos queda?',
      '¿va a llover esta tarde?',
      '¿cuándo va a empezar la lluvia?',
      '¿a qué hora oscurece?',
      '¿qué dice el pronóstico?',
      '¿cuál es el plan de hoy?',
      '¿hay alguna ventana esta tarde?',
      '¿podemos rociar esta tarde?',
      'le toit est-il sec ?',
      'le support est encore mouillé ?',
      'quand est-ce que le support sera sec ?',
      'combien de temps pour que le toit sèche ?',
      "quand est-ce qu'on peut commencer à coller ?",
      "jusqu'à quelle heure on peut pulvériser ?",
      'à quelle heure la dernière feuille ?',
      "quand est-ce qu'on arrête ?",
      'combien de temps il nous reste ?',
      "il va pleuvoir aujourd'hui ?",
      'quand commence la pluie ?',
      'à quelle heure fait-il nuit ?',
      'que dit la météo ?',
      "quel est le programme aujourd'hui ?",
      'il y a un créneau cet après-midi ?',
      'on peut coller cet après-midi ?'
    ]
  ],
  [
    { command: 'day', date: '2026-05-05' },
    [
      'what about tomorrow?',
      'can we spray tomorrow morning?',
      'will it rain tomorrow?',
      "what's the weather tomorrow?",
      '¿y mañana?',
      '¿podemos rociar mañana por la tarde?',
      '¿va a llover mañana?',
      '¿qué tiempo hace mañana?',
      'et demain ?',
      'on peut coller demain matin ?',
      'il va pleuvoir demain ?',
      'quel temps demain ?'
    ]
  ],
  [
    { command: 'day record', part: 'record', date: null },
    [
      'can I have the day record?',
      "show me today's log",
      'how much did we lay today?',
      '¿dónde está el registro de hoy?',
      '¿cuánto hemos colocado hoy?',
      'dame el informe del día',
      'je peux avoir le rapport du jour ?',
      "combien on a posé aujourd'hui ?",
      'montre le journal du jour'
    ]
  ],
  [{ command: 'day record', part: 'csv', date: null }, ['can I get the csv of today?', 'dame el csv de hoy', 'je peux avoir le csv du jour ?']],
  [
    { command: 'kit', kit: null },
    [
      'how long till the kits are warm?',
      'are the drums warm yet?',
      'when are the kits ready?',
      'which kit do we use next?',
      'is the kit still too cold?',
      'how warm is the resin?',
      'what temperature are the kits at?',
      '¿cuánto tiempo para que los juegos estén calientes?',
      '¿están calientes los tambores?',
      '¿cuándo están listos los kits?',
      '¿qué juego sigue?',
      '¿el juego está frío todavía?',
      '¿a qué temperatura está la resina?',
      'dans combien de temps les trousses sont prêtes ?',
      'les bidons sont chauds ?',
      'quand est-ce que les trousses seront prêtes ?',
      'quelle trousse utiliser ensuite ?',
      'la trousse est encore trop froide ?',
      'à quelle température est la résine ?'
    ]
  ],
  [
    { command: 'kit', kit: null, about: 'K3' },
    ['is kit 3 warm?', 'when is K3 ready?', '¿el juego 3 está caliente?', '¿cuándo está lista la K3? ¿el kit?', 'la trousse 3 est prête ?']
  ],
  [
    { command: 'probe list' },
    [
      'who has open voids?',
      'any open voids?',
      'how many voids do we still have?',
      'are there any holes left?',
      'which voids are fixed?',
      'are the seams all fixed?',
      'show me the open voids',
      '¿quién tiene fallas abiertas?',
      '¿hay poros abiertos?',
      '¿cuántas fallas faltan?',
      '¿quedan defectos por reparar?',
      '¿qué fallas están reparadas?',
      '¿dónde están las soldaduras frías?',
      'muéstrame las fallas abiertas',
      'qui a des défauts ouverts ?',
      'il y a des défauts ouverts ?',
      'combien de défauts il reste ?',
      'quels défauts sont réparés ?',
      'où sont les soudures froides ?',
      'montre les défauts ouverts',
      'list of voids',
      'lista de fallas',
      'lista de las fallas abiertas',
      'liste des défauts'
    ]
  ],
  [
    { command: 'strip', strip: { widthM: 2, gapMm: null, offMm: null, edgeMm: null, sheets: null, rollM: null, times: 4 } },
    [
      'how many strips for 4 joints of 2 m?',
      'how much cover strip for 4 end joints of 2 m?',
      'what length of strip for 4 joints 2 m wide?',
      '¿cuántas tiras para 4 juntas de 2 m?',
      '¿cuánta banda hace falta para 4 juntas de 2 m?',
      'combien de bandes pour 4 joints de 2 m ?',
      'il faut combien de bandes de recouvrement pour 4 joints de 2 m ?'
    ]
  ],
  [
    { command: 'strip', strip: { widthM: 2, gapMm: 6, offMm: null, edgeMm: null, sheets: null, rollM: null, times: null } },
    [
      'how long a strip for a 2 m sheet with a gap of 6 mm?',
      'what length of cover strip for 2 m with a 6 mm gap?',
      '¿qué largo de tira para 2 m con un hueco de 6 mm?',
      '¿cuánto mide la banda para una lámina de 2 m con 6 mm de hueco?',
      'quelle longueur de bande pour 2 m avec un écart de 6 mm ?',
      "on coupe la bande à combien pour 2 m et 6 mm d'écart ?"
    ]
  ],
  [
    { command: 'strip', strip: { widthM: 1.5, gapMm: null, offMm: null, edgeMm: null, sheets: null, rollM: null, times: null } },
    [
      'how long is the strip for a 1.5 m sheet?',
      'how much strip do we need for 1.5 m?',
      '¿cuánta tira hace falta para 1,5 m?',
      '¿de qué largo es la tira para una lámina de 1,5 m?',
      'quelle longueur de bande pour 1,5 m ?',
      'combien de bande il faut pour une feuille de 1,5 m ?'
    ]
  ],
  [
    { command: 'sheets', sheets: { outline: null, along: null, heightM: null, zones: null, widthM: null, lapMm: null, rollM: null } },
    [
      'how many rolls do we need?',
      'how many sheets for this roof?',
      'what materials do we need for the roof?',
      '¿cuántos rollos necesitamos?',
      '¿cuántas láminas para este techo?',
      '¿qué materiales hacen falta?',
      'combien de rouleaux il faut ?',
      'combien de feuilles pour ce toit ?',
      'quel matériel faut-il pour le toit ?'
    ]
  ],
  [
    { command: 'punch list' },
    [
      'lista de pendientes',
      'liste des réserves',
      "what's on the punch list?",
      'how many snags are left?',
      'is there anything left to fix?',
      '¿qué queda en la lista de pendientes?',
      '¿cuántos pendientes quedan?',
      '¿qué queda por arreglar?',
      'combien de réserves il reste ?',
      'quelles réserves sont ouvertes ?',
      'réserves restantes ?'
    ]
  ],
  [
    { command: 'fire', fire: {} },
    [
      'when can the fire watch stop?',
      'how long is the fire watch?',
      'is the fire watch over?',
      '¿hasta cuándo es la vigilancia?',
      '¿cuánto falta de la guardia de fuego?',
      'combien de temps pour la surveillance incendie ?',
      "la ronde incendie, c'est jusqu'à quand ?"
    ]
  ],
  [
    { command: 'bond', bond: null },
    ['how did the pull test do?', 'is the bond test done?', '¿cómo va la prueba de adherencia?', "l'essai d'adhérence est fait ?"]
  ],
  [
    { command: 'seal', seal: {} },
    [
      'what is open?',
      "what's still open",
      'what is left to do today',
      'what is still open',
      'are we done',
      'are we done for the day?',
      'can we go home',
      'can we stop now?',
      'wrap-up',
      'close the day',
      '¿qué falta por cerrar?',
      '¿qué queda por hacer hoy?',
      '¿ya podemos irnos?',
      'on peut rentrer ?',
      'on a fini ?',
      "qu'est-ce qui reste à faire aujourd'hui ?",
      '¿qué está abierto?',
      '¿qué queda abierto hoy?',
      "qu'est-ce qui est ouvert ?",
      "qu'est-ce qui reste ouvert ?",
      'is the night seal done?',
      'are the drains open?',
      '¿está hecho el cierre?',
      '¿están abiertos los desagües?',
      'les évacuations sont ouvertes ?',
      'le joint de nuit est fait ?'
    ]
  ],
  [
    { command: 'detail', details: {}, files: [] },
    ['which details are checked?', 'are the corners checked?', '¿qué detalles están revisados?', 'quels détails sont vérifiés ?']
  ],
  [
    { command: 'help', about: null },
    ['what can you do?', 'how does this work?', '¿qué puedes hacer?', '¿cómo funciona?', 'que sais-tu faire ?', 'comment ça marche ?']
  ]
]
