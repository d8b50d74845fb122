import { describe, expect, test } from 'vitest'
import type { Said } from '../../../src/bot/words/said.js'
import { metric, said, us } from './reader.js'

/** What each group of phrasings says, every one of them: three languages, two systems, any order. */
const groups: readonly (readonly [says: Said, metric: readonly string[], us: readonly string[]])[] = [
  [
    { command: 'air', reading: { airC: 20, rhPct: 50, windKmh: 16.09344 }, statement: { rainFalling: false } },
    [
      'air 20 rh 50 wind 10 mph no rain',
      'aire 20 hr 50 viento 10 mph sin lluvia',
      'air 20 hr 50 vent 10 mph sans pluie',
      'air no rain wind 10mph rh 50% air 20°C'
    ],
    [
      'air 68 rh 50 wind 10 no rain',
      'AIRE: 68, HR: 50, VIENTO: 10, sin lluvia',
      'air 68 F vent 10 humidité 50 % pas de pluie',
      '/air rh=50 air=68 wind=10 no rain'
    ]
  ],
  [
    { command: 'spray', reading: {}, statement: {}, kit: null },
    [
      'spray',
      '/spray',
      'seamhand spray',
      '/seamhand spray',
      '@seamhand spray',
      '@Seamhand, spray',
      '<@U123ABC> spray',
      '<@U123ABC|seamhand> /spray',
      'Spray!',
      'rociar',
      'pulvériser',
      'PULVERISER',
      'can we spray now?',
      'Can I spray?',
      'is it ok to spray',
      'ok to spray now?',
      'good to spray?',
      'are we good to spray',
      'is spraying ok?',
      'spray now?',
      'spray ok?',
      '¿podemos rociar ya?',
      '¿se puede rociar?',
      'puedo rociar ahora',
      '¿Ya podemos rociar?',
      'on peut pulvériser ?',
      'peut-on pulvériser ?',
      'Est-ce qu’on peut pulvériser ?',
      'est-ce que je peux pulvériser maintenant',
      'puis-je pulvériser'
    ],
    ['can we spray now?', '¿podemos rociar ya?', '« on peut pulvériser ? »']
  ],
  [
    { command: 'weld', reading: {}, statement: {} },
    [
      'weld',
      'can we weld?',
      'can we weld now',
      '¿podemos soldar?',
      'soldar',
      'on peut souder ?',
      'peut-on souder maintenant ?',
      'is it ok to weld',
      'welding ok?'
    ],
    ['weld']
  ],
  [
    { command: 'air', reading: {}, statement: {} },
    [
      'air',
      'is it ok to lay sheets?',
      'can we unroll the sheets',
      'can we unroll?',
      'lay',
      '¿podemos desenrollar las láminas?',
      '¿podemos colocar láminas?',
      'on peut dérouler les feuilles ?',
      'peut-on poser les lés ?'
    ],
    ['air']
  ],
  [
    { command: 'spray', reading: { airC: 20, substrateC: 18 }, statement: { substrateDry: true, fleeceDry: true }, kit: null },
    [
      'spray air 20 deck 18 dry',
      'can we spray now? air 20, deck 18, dry',
      'rociar aire 20 cubierta 18 seco',
      '¿podemos rociar? aire 20 soporte 18 seca',
      'pulvériser air 20 support 18 sec'
    ],
    ['spray air 68 deck 64.4 dry', 'on peut pulvériser ? air 68 support 64,4 sec', 'spray dry substrate 64.4 F air 68 F']
  ],
  [
    {
      command: 'spray',
      reading: {},
      statement: { tight: true, purged: true, nozzle: true, tested: false },
      kit: { name: 'K7', data: { isoC: 25, resinC: 24, mixed: false } }
    },
    [
      'spray kit K7 iso 25 resin 24 no mixed tight purged nozzle no tested',
      'rociar juego k7 iso 25 resina 24 no mezclado apretado purgado boquilla no probado',
      'pulvériser trousse K7 iso 25 résine 24 pas mélangé serré purgé buse pas testé',
      'spray no leak purged nozzle not tested not mixed kit K7 iso 25 resin 24'
    ],
    [
      'spray kit K7 iso 77 resin 75.2 no mixed tight purged nozzle no tested',
      'spray no mixed kit k7 resin 75,2 iso 77°F no leak purged nozzle no tested'
    ]
  ],
  [
    {
      command: 'spray',
      reading: {},
      statement: { substrateDry: true, fleeceDry: false, intakes: 'shut', sheet: 'relaxed', compatibility: 'compatible', deckMoisturePassed: true },
      kit: null
    },
    [
      'spray deck dry fleece wet intakes shut relaxed no bitumen moisture passed',
      'rociar cubierta seca fieltro mojado tomas cerradas reposadas sin betún ensayo pasa',
      'pulvériser support sec feutre mouillé prises fermées détendue sans bitume essai bon'
    ],
    ['spray substrate dry fleece wet intakes shut relaxed compatible moisture passed']
  ],
  [
    {
      command: 'weld coupon',
      welder: 'robot',
      coupon: { widthsMm: [41.275], peel: 'film', warm: true, setC: 400, speedMMin: 1.524, thicknessMm: 1.524, by: 'Ana' }
    },
    [
      'weld robot 41.2750 mm film warm set 400 speed 5 ft/min thick 60 mil by Ana',
      'weld robot 1 5/8 in film warm set 752 F speed 1.5240 thick 1.5240 by Ana',
      'soldar robot 41,2750 mm película caliente consigna 400 velocidad 1,5240 espesor 1,5240 por Ana',
      'souder automate film chaud consigne 400 vitesse 1,5240 épaisseur 1,5240 par Ana 41,2750 mm'
    ],
    ['weld robot 1 5/8 film warm set 752 speed 5 thick 0.06 by Ana', 'weld robot 1⅝" film warm set 752°F speed 5 ft/min thick 0.06 in by Ana']
  ],
  [
    { command: 'weld coupon', welder: 'W2', coupon: { widthsMm: [], peel: 'parted', warm: false } },
    ['weld W2 parted', 'soldar w2 separada', 'souder W2 décollées'],
    ['weld w2 parted']
  ],
  [
    { command: 'weld event', welder: 'hand', event: { event: 'set', setC: 400 } },
    ['weld hand set 400', 'soldar mano ajuste 400', 'souder main réglage 400'],
    ['weld hand set 752']
  ],
  [
    { command: 'weld event', welder: 'hand', event: { event: 'speed', speedMMin: 1.524 } },
    ['weld hand speed 1.5240', 'weld hand speed 5 ft/min'],
    ['weld hand speed 5']
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'operator', by: 'Léo' } },
    ['weld robot operator Léo', 'soldar robot operador Léo', 'souder robot opérateur Léo'],
    ['weld robot operator Léo']
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'lead' }, lead: { leadM: 50, areaMm2: 2.5 } },
    ['weld robot lead 50 m 2.5 mm2', 'soldar robot cable 50 m 2,5 mm2', 'souder robot rallonge 50 m 2,5 mm2'],
    []
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'thickness', thicknessMm: 2, lot: 'L2', colour: 'grey' } },
    ['weld robot thick 2 lot L2 colour grey', 'soldar robot espesor 2 lote L2 color Grey', 'souder robot épaisseur 2 mm lot L2 couleur grey'],
    []
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'old-sheet' } },
    ['weld robot old', 'weld robot old sheet', 'soldar robot lámina vieja', 'souder robot ancienne feuille'],
    ['weld robot old']
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'roller' } },
    ['weld robot roller', 'soldar robot rodillo', 'souder robot rouleau'],
    ['weld robot roller']
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'source' } },
    ['weld robot source', 'soldar robot generador', 'souder robot groupe'],
    ['weld robot generator']
  ],
  [
    { command: 'weld event', welder: 'hand', event: { event: 'probed' } },
    ['weld hand probed', 'soldar mano repasado', 'souder main sondé'],
    ['weld hand probed']
  ],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'released', metresM: 20 } },
    ['weld robot released 20 m', 'soldar robot liberado 20', 'souder robot libéré 20 m'],
    []
  ],
  [
    { command: 'weld coupon', welder: 'robot', coupon: { widthsMm: [41], peel: 'film', warm: false, cut: true } },
    ['weld robot cut 41 film', 'soldar robot testigo 41 película', 'souder robot prélèvement 41 film'],
    []
  ],
  [
    { command: 'weld coupon', welder: 'robot', coupon: { widthsMm: [41], peel: 'film', warm: false, lot: 'L1', colour: 'grey', old: true } },
    [
      'weld robot 41 film lot L1 colour grey old',
      'soldar robot 41 película lote L1 color grey vieja',
      'souder robot 41 film lot L1 couleur grey vieille'
    ],
    []
  ],
  [{ command: 'weld chart', welder: 'robot' }, ['weld robot chart', 'soldar robot gráfico', 'souder robot graphique'], ['weld robot chart']],
  [
    { command: 'weld event', welder: 'robot', event: { event: 'off' } },
    ['weld robot off', 'soldar robot apagado', 'souder robot arrêt'],
    ['weld robot off']
  ],
  [
    { command: 'weld', reading: { sheetC: 30 }, statement: { lapDry: true, lapClean: true, thumbTest: true, lead: { leadM: 30.48, areaMm2: 2.5 } } },
    [
      'weld sheet 30 lap clean dry thumb lead 100 ft 2.5 mm2',
      'soldar lámina 30 solape limpio seco pulgar cable 30,48 2,5',
      'souder feuille 30 recouvrement propre sec pouce rallonge 30,48 2,5'
    ],
    ['weld sheet 86 lap clean dry thumb lead 100 2.5 mm²']
  ],
  [
    { command: 'strip', strip: { widthM: 1.8288, gapMm: 6.35, offMm: 3.175, edgeMm: null, sheets: 2, rollM: 18.288, times: 4 } },
    [
      'strip 6 ft gap 6.35 off 3.1750 sheets 2 roll 18.2880 x4',
      'strip 1.8288 m gap 1/4 in off ⅛ in sheets 2 roll 60 ft x 4',
      'tira 1,8288 hueco 6,35 descentrada 3,1750 láminas 2 rollo 18,2880 x4',
      'bande 1,8288 écart 6,35 décalage 3,1750 feuilles 2 rouleau 18,2880 ×4'
    ],
    [
      'strip 6 gap 1/4 off 1/8 sheets 2 roll 60 x4',
      'strip 6\' gap ¼" off ⅛" sheets 2 roll 60\' ×4',
      'strip x4 6 ft gap 0.25 roll 60 ft sheets 2 off 0.125'
    ]
  ],
  [
    { command: 'probe open', found: { course: 4, on: 'end', distanceM: 3.048, lengthMm: 38.1, causes: ['dirty', 'cold'] } },
    [
      'probe course 4 end 3.0480 m 38.1 mm dirty cold',
      'probe dirty cold course 4 38.1 at 3.0480 end joint',
      'punzón hilera 4 junta 3,0480 m 38,1 mm sucio frío',
      "sonder rang 4 joint d'about à 3,0480 long 38,1 sale froid",
      'repasar hilera 4 junta a tope a 3,0480 largo 38,1 sucia fría'
    ],
    [
      'probe course 4 end 10 ft long 1 1/2 dirty cold',
      'probe course 4 1 1/2 in 10 ft end dirty cold',
      'probe course 4 end at 10\' long 1½" dirty cold'
    ]
  ],
  [
    { command: 'probe step', number: 12, step: 'fixed' },
    ['probe 12 fixed', 'probe fixed 12', 'probe void 12 fixed', 'punzón 12 reparado', 'sonder 12 réparée'],
    ['probe 12 fixed']
  ],
  [{ command: 'kit', kit: null }, ['kit', '/kit', 'juego', 'trousse'], ['kit']],
  [
    {
      command: 'kit',
      kit: {
        name: 'K7',
        data: {
          isoC: 25,
          resinC: 25,
          place: 'box',
          placeC: 30,
          expiresOn: '2026-05-05',
          lot: 'A-12',
          usedM2: 46.45152,
          empty: true,
          isoLeftPct: 20,
          resinLeftPct: 12.5
        }
      }
    },
    [
      'kit K7 25 box 30 exp tomorrow lot A-12 used 46.45152 empty left 20 12.5 %',
      'kit k7 iso 25 resin 25 warm box 30 expires 2026-05-05 lot A-12 used 500 sq ft empty left resin 12.5 % iso 20',
      'juego K7 25 caja 30 caduca mañana lote A-12 usado 46,45152 vacío queda 20 % 12,5 %',
      'trousse K7 25 caisse 30 expire demain lot A-12 utilisé 46,45152 vide reste iso 20 résine 12,5 %'
    ],
    [
      'kit K7 77 box 86 exp tomorrow lot A-12 used 500 empty left 20 12.5',
      'kit 77 K7 left 20 12.5 empty used 500 ft2 lot A-12 exp 2026-05-05 box 86 F'
    ]
  ],
  [
    { command: 'foam', gelS: 45, signs: ['dark', 'brittle'] },
    ['foam 45 s dark brittle', 'espuma 45 oscura quebradiza', 'mousse 45s foncée cassante', 'foam dark brittle 0.75 min'],
    ['foam 45 dark brittle']
  ],
  [
    { command: 'laid', laid: { areaM2: 46.45152, sheets: 3, course: 2, robotM: 60.96, handM: 3.048, kit: 'K7' } },
    [
      'laid 46.45152 m2 sheets 3 course 2 kit K7 robot 60.96 hand 3.0480',
      'colocado 46,45152 láminas 3 hilera 2 juego K7 robot 60,96 mano 3,0480',
      'posé 46,45152 feuilles 3 rang 2 trousse K7 automate 60,96 main 3,0480'
    ],
    ['laid 500 sheets 3 course 2 kit K7 robot 200 hand 10', 'laid 500 ft² sheets 3 course 2 kit K7 robot 200 ft hand 10 ft']
  ],
  [
    { command: 'me', lang: 'es', units: 'us', summary: null },
    ['me lang es units us', 'yo idioma español unidades us', 'moi langue espagnol unités us', 'me units: us, lang: es'],
    ['me lang es units us']
  ],
  [
    { command: 'me', lang: null, units: null, summary: false },
    ['me no summary', 'yo sin resumen', 'moi sans résumé', 'me: no summary'],
    ['me no summary']
  ],
  [{ command: 'help', about: 'weld' }, ['help weld', 'help /weld', 'ayuda soldar', 'aide souder'], ['help weld']],
  [{ command: 'help', about: null }, ['help', '/seamhand help', 'ayuda', 'aide'], ['help']],
  [
    { command: 'undo', ids: ['demo-12', 'north-roof-3'] },
    ['undo demo-12 north-roof-3', 'deshacer demo-12, north-roof-3', 'annuler DEMO-12,north-roof-3'],
    ['undo demo-12 north-roof-3']
  ]
]

const cases = groups.flatMap(([says, inMetric, inUs]) => [
  ...inMetric.map((text) => [text, metric, says] as const),
  ...inUs.map((text) => [text, us, says] as const)
])

describe('the same thing said in many ways', () => {
  test.each(cases)('%s', (text, reader, says) => {
    expect(said(text, reader)).toEqual(says)
  })

  test('there are many', () => {
    expect(cases.length).toBeGreaterThan(150)
  })
})

test('the worked messages of the contract', () => {
  expect(said('/strip 2 m gap 6')).toMatchObject({ command: 'strip', strip: { widthM: 2, gapMm: 6 } })
  expect(said('/weld robot 41 mm film')).toEqual({ command: 'weld coupon', welder: 'robot', coupon: { widthsMm: [41], peel: 'film', warm: false } })
  expect(said('/probe course 4 end 3.2 m 40 mm')).toEqual({
    command: 'probe open',
    found: { course: 4, on: 'end', distanceM: 3.2, lengthMm: 40, causes: [] }
  })
  const all =
    '/spray air 20 deck 20 rh 50 wind 10 gust 15 rain 10 % no thunder mixed kit 25 dry clean compatible intakes none relaxed tight purged nozzle tested exp 2099-01-01'
  expect(said(all)).toEqual({
    command: 'spray',
    reading: { airC: 20, substrateC: 20, rhPct: 50, windKmh: 10, gustKmh: 15 },
    statement: {
      rainFalling: false,
      rainChancePct: 10,
      thunder: false,
      substrateDry: true,
      fleeceDry: true,
      substrateClean: true,
      compatibility: 'compatible',
      intakes: 'none',
      sheet: 'relaxed',
      tight: true,
      purged: true,
      nozzle: true,
      tested: true
    },
    kit: { name: null, data: { isoC: 25, resinC: 25, mixed: true, expiresOn: '2099-01-01' } }
  })
})

test('a person is a name, or the id of a mention', () => {
  for (const who of ['U12AB', '<@U12AB>', '<@U12AB|ana>', '@U12AB']) {
    expect(said(`weld robot operator ${who}`)).toEqual({ command: 'weld event', welder: 'robot', event: { event: 'operator', by: 'U12AB' } })
  }
})

test('order is free', () => {
  const parts = ['air 20', 'deck 18', 'rh 50', 'dry', 'no thunder', 'kit K7 25', 'intakes none']
  const first = said(`spray ${parts.join(' ')}`)
  for (let turn = 1; turn < parts.length; turn += 1) {
    expect(said(`spray ${[...parts.slice(turn), ...parts.slice(0, turn)].join(' ')}`)).toEqual(first)
  }
})

test('the reason of an override is free text', () => {
  expect(said('/spray override wind is in the lee, 1,250 m <!channel> @07:30')).toEqual({
    command: 'spray override',
    reason: 'wind is in the lee, 1,250 m <!channel> @07:30'
  })
  expect(said('rociar forzar viento a sotavento')).toEqual({ command: 'spray override', reason: 'viento a sotavento' })
  expect(said('pulvériser outrepasser: vent faible')).toEqual({ command: 'spray override', reason: 'vent faible' })
})
