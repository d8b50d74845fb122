import type { subcommands } from './index.js'

/** How each is called, in one table: what `NAME --help` prints. Every option is named; a test holds that. */
export const terminalUsages: Readonly<Record<keyof typeof subcommands | 'serve', string>> = {
  serve: 'serve (also without a word): starts the server, prints `ready http://HOST:PORT`',
  ask: `ask [--json] [--at ISO] [--weather FILE|sample|none|live] [--issued ISO] [--site NAME] [--as USER] [--role crew|supervisor]
    [--lang en|es|fr] [--units metric|us] [--limits FILE] [--outline FILE] [--data DIR] [--no-log] TEXT
ask --json --lines: one {"text", "at"?, "weather"?, "site"?, "as"?, "role"?, "lang"?, "units"?, "log"?} a line in, one answer a line out
what can be asked: ask help`,
  verify: 'verify [--site NAME] [--anchor SITE:SEQ:HASH]… [--json] [--workspace TEAM] [--data DIR]',
  replay: 'replay [--json] [--lang en|es|fr] [--workspace TEAM] [--data DIR] SITE-SEQ',
  export: 'export --site NAME --out FILE [--format jsonl|csv|pdf|zip] [--day DATE] [--lang en|es|fr] [--workspace TEAM] [--data DIR]',
  formula: 'formula [NAME KEY=VALUE…] [--json] [--lines]',
  tick: 'tick --at ISO [--json] [--data DIR]',
  manifest: 'manifest --url https://…',
  migrate: 'migrate [--json] [--data DIR]',
  move: 'move --to postgres://… [--data DIR]',
  backup: 'backup [--data DIR] FILE',
  restore: 'restore [--data DIR] FILE',
  forget: 'forget --person ID [--workspace TEAM] [--successor ID] [--data DIR]'
}

/** Help is asked for by an option, not by a word of the question. */
export function wantsUsage(args: readonly string[]): boolean {
  const end = args.indexOf('--')
  return (end < 0 ? args : args.slice(0, end)).some((arg) => arg === '--help' || arg === '-h')
}
