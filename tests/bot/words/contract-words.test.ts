import { describe, expect, test } from 'vitest'
import { commandWords } from '../../../src/bot/words/command-words.js'
import { fold } from '../../../src/bot/words/fold.js'
import { allForms, type Words } from '../../../src/bot/words/forms.js'
import { questionLists } from '../../../src/bot/words/questions.js'
import { unitWords } from '../../../src/bot/words/unit.js'
import { airVocabulary } from '../../../src/bot/words/vocabularies/air.js'
import { bondVocabulary } from '../../../src/bot/words/vocabularies/bond.js'
import { detailVocabulary } from '../../../src/bot/words/vocabularies/detail.js'
import { fireVocabulary } from '../../../src/bot/words/vocabularies/fire.js'
import { foamVocabulary } from '../../../src/bot/words/vocabularies/foam.js'
import { kitVocabulary } from '../../../src/bot/words/vocabularies/kit.js'
import { laidVocabulary } from '../../../src/bot/words/vocabularies/laid.js'
import { meVocabulary } from '../../../src/bot/words/vocabularies/me.js'
import { probeVocabulary } from '../../../src/bot/words/vocabularies/probe.js'
import { punchVocabulary } from '../../../src/bot/words/vocabularies/punch.js'
import { roleVocabulary } from '../../../src/bot/words/vocabularies/role.js'
import { sealVocabulary } from '../../../src/bot/words/vocabularies/seal.js'
import { sheetsVocabulary } from '../../../src/bot/words/vocabularies/sheets.js'
import { siteVocabulary } from '../../../src/bot/words/vocabularies/site.js'
import { sprayVocabulary } from '../../../src/bot/words/vocabularies/spray.js'
import { startVocabulary } from '../../../src/bot/words/vocabularies/start.js'
import { stripVocabulary } from '../../../src/bot/words/vocabularies/strip.js'
import { weldVocabulary } from '../../../src/bot/words/vocabularies/weld.js'
import { welderVocabulary } from '../../../src/bot/words/vocabularies/welder.js'
import { said } from './reader.js'

/**
 * The table of the contract, §5: words in English, Spanish, French (parted by spaces), a message with the word as `_`, and
 * what it must say. `record` is a word of a command that is not there yet.
 */
const table: readonly (readonly [words: string, message: string, says: object])[] = [
  ['air aire air', 'spray _ 20', { reading: { airC: 20 } }],
  ['deck substrate cubierta sustrato soporte support', 'spray _ 20', { reading: { substrateC: 20 } }],
  ['sheet lámina feuille', 'weld _ 20', { reading: { sheetC: 20 } }],
  ['rh humidity hr humedad hr humidité', 'air _ 50', { reading: { rhPct: 50 } }],
  ['dew rocío rosée', 'air _ 9', { reading: { dewPointC: 9 } }],
  ['wind viento vent', 'air _ 10', { reading: { windKmh: 10 } }],
  ['gust racha rafale', 'air _ 10', { reading: { gustKmh: 10 } }],
  ['sun sol soleil', 'air _ 500', { reading: { sunWm2: 500 } }],
  ['rain lluvia pluie', 'spray _', { statement: { rainFalling: true } }],
  ['rain lluvia pluie', 'spray _ 10 %', { statement: { rainFalling: false, rainChancePct: 10 } }],
  ['rain lluvia pluie', 'spray no _', { statement: { rainFalling: false } }],
  ['thunder trueno tonnerre', 'air _', { statement: { thunder: true } }],
  ['kit juego trousse', 'spray _ 25', { kit: { name: null, data: { isoC: 25, resinC: 25 } } }],
  ['iso iso iso', 'kit _ 25', { kit: { name: null, data: { isoC: 25 } } }],
  ['resin resina résine', 'kit _ 25', { kit: { name: null, data: { resinC: 25 } } }],
  ['exp caduca expire', 'spray _ 2099-01-01', { kit: { name: null, data: { expiresOn: '2099-01-01' } } }],
  ['dry seco sec', 'spray _', { statement: { substrateDry: true, fleeceDry: true } }],
  ['wet mojado mouillé', 'spray _', { statement: { substrateDry: false, fleeceDry: false } }],
  ['clean limpio propre', 'weld _', { statement: { lapClean: true } }],
  ['dirty sucio sale', 'weld lap _', { statement: { lapClean: false } }],
  ['compatible compatible compatible', 'spray _', { statement: { compatibility: 'compatible' } }],
  ['contact bitumen contacto betún contact bitume', 'weld _', { statement: { compatibility: 'contact' } }],
  ['bitumen betún bitume', 'spray no _', { statement: { compatibility: 'compatible' } }],
  ['ask consultar demander', 'spray _', { statement: { compatibility: 'ask' } }],
  ['intakes tomas prises', 'spray _ none', { statement: { intakes: 'none' } }],
  ['none ninguna aucune', 'spray intakes _', { statement: { intakes: 'none' } }],
  ['shut cerrada fermée', 'spray intakes _', { statement: { intakes: 'shut' } }],
  ['open abierta ouverte', 'spray intakes _', { statement: { intakes: 'open' } }],
  ['rolled enrollado enroulé', 'spray _', { statement: { sheet: 'rolled' } }],
  ['unrolled desenrollado déroulé', 'spray _', { statement: { sheet: 'unrolled' } }],
  ['relaxed reposado détendu', 'spray _', { statement: { sheet: 'relaxed' } }],
  ['start inicio début', 'spray _', { statement: { start: true } }],
  ['mixed mezclado mélangé', 'spray _', { kit: { name: null, data: { mixed: true } } }],
  ['tight apretado serré', 'spray _', { statement: { tight: true } }],
  ['purged purgado purgé', 'spray _', { statement: { purged: true } }],
  ['nozzle boquilla buse', 'spray _', { statement: { nozzle: true } }],
  ['tested probado testé', 'spray _', { statement: { tested: true } }],
  ['leak fuga fuite', 'spray _', { statement: { tight: false } }],
  ['film película film', 'weld robot 40 _', { coupon: { peel: 'film' } }],
  ['parted separado décollé', 'weld robot 40 _', { coupon: { peel: 'parted' } }],
  ['scorched quemado brûlé', 'weld robot 40 _', { coupon: { peel: 'scorched' } }],
  ['glossy brillante brillant', 'weld robot 40 _', { coupon: { peel: 'glossy' } }],
  ['uneven desigual inégal', 'weld robot 40 _', { coupon: { peel: 'uneven' } }],
  ['wrinkled arrugado plissé', 'weld robot 40 _', { coupon: { peel: 'wrinkled' } }],
  ['warm caliente chaud', 'weld robot 40 film _', { coupon: { warm: true } }],
  ['restart reinicio redémarrage', 'weld robot _', { event: { event: 'restart' } }],
  ['power corte coupure', 'weld robot _', { event: { event: 'power' } }],
  ['hand mano main', 'weld _', { command: 'weld show', welder: 'hand' }],
  ['course hilera rang', 'probe _ 4 40 mm', { found: { course: 4, on: 'lap' } }],
  ['lap traslape solape recouvrement', 'probe course 4 _ 40 mm', { found: { on: 'lap' } }],
  ['end junta about', 'probe course 4 _ 40 mm', { found: { on: 'end' } }],
  ['strip tira banda bande', 'probe course 4 _ 40 mm', { found: { on: 'strip' } }],
  ['patch parche pièce', 'probe course 4 _ 40 mm', { found: { on: 'patch' } }],
  ['gap hueco écart', 'strip 2 _ 6', { strip: { gapMm: 6 } }],
  ['off descentrado décalage', 'strip 2 _ 6', { strip: { offMm: 6 } }],
  ['edge borde bord', 'strip 2 _ 60', { strip: { edgeMm: 60 } }],
  ['at a à', 'probe course 4 40 _ 3', { found: { distanceM: 3, lengthMm: 40 } }],
  ['long largo long', 'probe course 4 _ 40', { found: { lengthMm: 40 } }],
  ['along según selon', 'sheets 24x36 _ x', { sheets: { along: 'x' } }],
  ['height altura hauteur', 'sheets 24x36 _ 8', { sheets: { heightM: 8 } }],
  ['zones zonas zones', 'sheets 24x36 _ asce', { sheets: { zones: 'asce' } }],
  ['fixed reparado réparé', 'probe 3 _', { command: 'probe step', number: 3, step: 'fixed' }],
  ['passed pasa bon', 'probe 3 _', { command: 'probe step', number: 3, step: 'passed' }],
  ['failed rechazado mauvais', 'probe 3 _', { command: 'probe step', number: 3, step: 'failed' }],
  ['list lista liste', 'probe _', { command: 'probe list' }],
  ['undo deshacer annuler', '_', { command: 'undo', ids: [] }],
  ['box caja caisse', 'kit _', { kit: { data: { place: 'box' } } }],
  ['store almacén dépôt', 'kit _', { kit: { data: { place: 'store' } } }],
  ['deck cubierta toiture', 'kit _ 18', { kit: { data: { place: 'deck', placeC: 18 } } }]
]

const cases = table.flatMap(([words, message, says]) => words.split(' ').map((word) => [message.replace('_', word), says] as const))

describe('every word of the contract has its meaning', () => {
  test.each(cases)('%s', (text, says) => {
    expect(said(text)).toMatchObject(says)
  })

  test.each(cases)('%s, without accents and in capitals', (text, says) => {
    expect(said(text.normalize('NFD').replace(/\p{M}/gu, '').toUpperCase())).toMatchObject(says)
  })
})

const vocabularies = {
  spray: sprayVocabulary,
  air: airVocabulary,
  weld: weldVocabulary,
  welder: welderVocabulary,
  strip: stripVocabulary,
  sheets: sheetsVocabulary,
  probe: probeVocabulary,
  kit: kitVocabulary,
  foam: foamVocabulary,
  laid: laidVocabulary,
  bond: bondVocabulary,
  seal: sealVocabulary,
  fire: fireVocabulary,
  detail: detailVocabulary,
  punch: punchVocabulary,
  site: siteVocabulary,
  me: meVocabulary,
  role: roleVocabulary,
  start: startVocabulary,
  commands: Object.fromEntries(Object.entries(commandWords).map(([command, words]) => [command, { words }]))
}

const named = Object.entries<Readonly<Record<string, { readonly words: Words }>>>(vocabularies)

describe.each(named)('vocabulary of %s', (_, vocabulary) => {
  const pairs = Object.entries(vocabulary).flatMap(([label, { words }]) => allForms(words).map((word) => [fold(word), label] as const))

  test('gives each word one meaning', () => {
    const meanings = new Map<string, Set<string>>()
    for (const [word, label] of pairs) meanings.set(word, (meanings.get(word) ?? new Set()).add(label))
    expect([...meanings].filter(([, labels]) => labels.size > 1)).toEqual([])
  })

  test('takes no spelling of a unit and no filler behind a verb for a word', () => {
    const { index } = questionLists.after
    expect(pairs.filter(([word]) => unitWords.has(word) || index.has(word))).toEqual([])
  })

  test('has words in all three languages', () => {
    for (const { words } of Object.values(vocabulary)) expect(Object.values(words).every((list) => list.trim() !== '')).toBe(true)
  })
})
