export const commandNames = [
  'spray',
  'air',
  'weld',
  'strip',
  'sheets',
  'probe',
  'kit',
  'foam',
  'laid',
  'bond',
  'seal',
  'fire',
  'detail',
  'punch',
  'day',
  'site',
  'start',
  'role',
  'help',
  'me',
  'undo',
  'correct'
] as const
export type CommandName = (typeof commandNames)[number]

/** How a command is written, and one example. */
export type Usages = Readonly<Record<CommandName, { readonly usage: string; readonly example: string }>>

/** In English words; each language has them in its own, and the words of all languages count always. */
export const usages: Usages = {
  spray: {
    usage:
      'spray [air T] [deck T] [rh N] [wind V] [gust V] [rain | rain N % | no rain] [no thunder] [kit T] [dry] [clean] [mixed] [relaxed] [tight purged nozzle tested] · spray override REASON',
    example: '/spray air 20 deck 18 rh 60 wind 10 gust 18 rain 10 % dry clean'
  },
  air: { usage: 'air [air T] [rh N] [wind V] [gust V] [rain N %] [thunder | no thunder]', example: '/air wind 18 gust 30 no thunder' },
  weld: {
    usage:
      'weld [sheet T] [lap clean] [dry] [lead L AREA] · weld NAME WIDTH… PEEL [cut] [warm] [set T] [speed V] [thick MM] [lot L] [colour C] [old] [by WHO] · weld NAME restart | power | source | lead | set T | speed V | nozzle | roller | operator WHO | thick MM | lot L | colour C | old | off | probed | released [LENGTH] | chart',
    example: '/weld robot 41 40 42 mm film set 480 speed 2.5'
  },
  strip: { usage: 'strip WIDTH [gap G] [off O] [edge RUN] [sheets N] [roll L] [xN] [picture]', example: '/strip 2 m gap 6 mm' },
  sheets: {
    usage:
      'sheets WIDTHxDEPTH [notch WxD ne | se | sw | nw] [opening WxD at X,Y] | X,Y X,Y X,Y… [opening …] · with [along x | y] [height H] [zones en | asce | nbcc] [sheet W] [lap L] [roll L]',
    example: '/sheets 24x36 m opening 2x1.2 at 5,9'
  },
  probe: {
    usage:
      'probe course N [lap | end | strip | patch] [DISTANCE m] LENGTH [CAUSE…] [cooled] · probe N fixed [lifted cleaned dried reheated cooled] [patch] | passed | failed · probe list',
    example: '/probe course 4 end 3.2 m 40 mm cold'
  },
  kit: {
    usage: 'kit · kit NAME [iso T] [resin T] [T] [box | store | deck [T]] [mixed] [exp DATE] [lot L] [used AREA] [left N N %] [empty]',
    example: '/kit K7 iso 24 resin 23 mixed box 28'
  },
  foam: { usage: 'foam [SECONDS s] [even | streaks | dark | brittle | soft | tacky | flat]', example: '/foam 45 s even' },
  laid: {
    usage: 'laid AREA [sheets N] [course N] [kit NAME] [robot LENGTH] [hand LENGTH] [NAME LENGTH]',
    example: '/laid 42 m2 sheets 2 course 4 kit K7 robot 20 hand 4'
  },
  bond: {
    usage: 'bond [SUBSTRATE] [FORCE N | lbf] [foam | fleece | facer | clean] [wanted FORCE] [square SIDE] [uncured] · bond',
    example: '/seamhand bond board 900 N foam'
  },
  seal: {
    usage:
      'seal [LENGTH [tape | foam | mastic | welded | weighed] | none] [drains open | blocked] [rolled | loose] [by WHO] · seal cut [wet LENGTH] · seal',
    example: '/seamhand seal 12 m tape drains open rolled by Ana'
  },
  fire: {
    usage: 'fire [heat] [TIME h | min] [done] [by WHO] · fire',
    example: '/seamhand fire done by Ana'
  },
  detail: {
    usage: 'detail [corners] [pipes] [drains] [terminations] [cut edges] [t-steps] [all] [failed] [no pipes] · detail',
    example: '/seamhand detail corners drains'
  },
  punch: {
    usage: 'punch TEXT… · punch N done | open · punch list',
    example: '/seamhand punch flange loose at drain 2'
  },
  day: { usage: 'day [DATE | yesterday | today | tomorrow] · day start · day record [DATE] · day csv [DATE]', example: '/day tomorrow' },
  site: {
    usage:
      'site [NAME] [units metric | us] [lang en | es | fr] [morning HH:MM] [evening HH:MM] [days mon-sat] [hours HH:MM-HH:MM] [posts KINDS | off] [limits ID] [substrate KIND] [channel CHANNEL] · site new NAME at LAT,LON zone ZONE · site NAME closed',
    example: '/site units us morning 05:30'
  },
  start: {
    usage:
      'start · start NAME at LAT,LON zone Area/City [units metric | us] [lang en | es | fr] [morning HH:MM] [evening HH:MM] [days mon-sat] [hours HH:MM-HH:MM] [posts KINDS | off] [limits ID] [substrate KIND] [channel CHANNEL | off]',
    example: '/seamhand start north at 50.1,8.2 zone Europe/Berlin units metric hours 06:00-16:00'
  },
  role: { usage: 'role · role PERSON [supervisor | crew | inspector]', example: '/seamhand role @U0123ABCD supervisor' },
  help: { usage: 'help [COMMAND | guide]', example: '/seamhand help spray' },
  me: { usage: 'me [lang en | es | fr] [units metric | us] [summary | no summary]', example: '/seamhand me lang es units us' },
  undo: { usage: 'undo [ID]', example: '/seamhand undo north-12' },
  correct: { usage: 'correct ID WORDS…', example: '/seamhand correct north-12 air 21' }
}

export function isCommandName(name: string | null): name is CommandName {
  return (commandNames as readonly (string | null)[]).includes(name)
}
