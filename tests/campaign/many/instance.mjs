// One instance of the program as it is built, with a clock that runs faster and beats of its own: `instance.mjs DIST`.
const [dist] = process.argv.slice(2)
const { readConfig } = await import(`${dist}/config.js`)
const { serve } = await import(`${dist}/wiring/serve.js`)
const { wire } = await import(`${dist}/wiring/tools.js`)

const { CLOCK_FROM, CLOCK_REAL_MS, CLOCK_SPEED, BEAT_MS } = Object.fromEntries(
  Object.entries(process.env).map(([key, value]) => [key, Number(value)])
)

const terminal = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  lines: async function* () {},
  now: () => Math.floor(CLOCK_FROM + ((Date.now() - CLOCK_REAL_MS) / 1000) * CLOCK_SPEED)
}

function everyBeat(run) {
  const timer = setInterval(run, BEAT_MS)
  return { stop: () => clearInterval(timer) }
}

const told = new Promise((resolve) => process.once('SIGTERM', resolve))
const config = readConfig(process.env)
process.exitCode = await serve(config, wire(config, terminal, true), told, everyBeat)
setTimeout(() => process.exit(), 200).unref()
