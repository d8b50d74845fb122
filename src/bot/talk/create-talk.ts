import type { KnownBlock } from '@slack/types'
import type { Lang, Units } from '../answer.js'
import type { Ports } from '../context.js'
import type { Phrase } from '../forms/form.js'
import { type FormId, formIds } from '../forms/form-id.js'
import { forms } from '../forms/index.js'
import type { Replied } from '../papers/drawn.js'
import type { FetchedPhoto } from '../photos/fetched.js'
import { keepPhoto } from '../photos/keep-photo.js'
import { type WantedPhoto, wantedIn } from '../photos/wanted.js'
import { respond } from '../respond.js'
import { settingsOf } from '../session/session.js'
import { texts } from '../text/index.js'
import { readWords } from '../words/read.js'
import { askFor, type Places } from './asks.js'
import { buttonsUnder, formButton, readButton, sayButton } from './buttons.js'
import { formView, readContext } from './form-view.js'
import { homeView } from './home.js'
import type { Delivery, FormValues, Message, Pressed, Submitted, Talk } from './talk.js'

/** Commands whose answer is for the asker alone. */
const forAsker: ReadonlySet<string | null> = new Set(['help', 'me', 'role', null])

/** The bot for transports: one dispatcher behind messages, buttons, forms and home. */
export function createTalk(ports: Ports, places: Places): Talk {
  const failed = (delivery: Delivery, error: unknown): Message => {
    const ref = ports.report(error, { user: delivery.user, via: delivery.via })
    return plainMessage(texts[delivery.lang ?? ports.lang].talk.failed(ref))
  }
  const guarded = async <T>(delivery: Delivery, run: () => Promise<T>, otherwise: (message: Message) => T): Promise<T> => {
    try {
      return await run()
    } catch (error) {
      return otherwise(failed(delivery, error))
    }
  }
  return {
    say: (delivery, text) =>
      guarded(
        delivery,
        () => say(delivery, text, ports, places),
        (message) => message
      ),
    press: (delivery, actionId, value) =>
      guarded(
        delivery,
        () => press(delivery, actionId, value, ports),
        (message) => ({ kind: 'message', message })
      ),
    shortcut: (delivery, callbackId) =>
      guarded(
        delivery,
        () => shortcut(delivery, callbackId, ports, places),
        (message) => ({ kind: 'message', message })
      ),
    photo: (delivery, wanted, fetched) =>
      guarded(
        delivery,
        () => photo(delivery, wanted, fetched, ports),
        (message) => message
      ),
    submit: (delivery, callbackId, metadata, values) =>
      guarded(
        delivery,
        () => submit(delivery, callbackId, metadata, values, ports),
        (message) => ({ kind: 'message', message, channel: delivery.channel })
      ),
    home: (delivery) => guarded(delivery, async () => homeView(delivery, (await preferred(delivery, null, ports)).lang, ports), emptyHome),
    failed,
    working: (delivery) => plainMessage(texts[delivery.lang ?? ports.lang].talk.working)
  }
}

async function say(delivery: Delivery, text: string, ports: Ports, places: Places): Promise<Message> {
  const site = delivery.channel === null ? null : await places.siteOfChannel(delivery.workspace, delivery.channel)
  if (text === '' && (delivery.files ?? []).length > 0) return photosAlone(delivery, site, ports)
  const ask = await askFor(delivery, withPhotos(text, delivery), site, ports)
  return messageOf(await respond(ask, ports), ask.log)
}

/** Commands that take photos: those of a message go with its words. */
const withPhoto: ReadonlySet<string | null> = new Set(['probe', 'bond', 'seal', 'detail', 'punch'])

function withPhotos(text: string, { files = [], at }: Delivery): string {
  if (files.length === 0) return text
  const read = readWords(text, { units: 'metric', zone: 'UTC', now: at })
  const command = read.ok ? (read.said.command.split(' ')[0] ?? null) : read.command
  return withPhoto.has(command) ? [text, ...files.slice(0, mostPhotos).map((file) => `photo ${file}`)].join(' ') : text
}

const mostPhotos = 5

/** Photos without a word: what do they show? */
async function photosAlone(delivery: Delivery, site: string | null, ports: Ports): Promise<Message> {
  const { lang } = await preferred(delivery, site, ports)
  const message = plainMessage(texts[lang].closing.photo.alone)
  if (site === null) return message
  const files = (delivery.files ?? []).slice(0, mostPhotos)
  const elements = (['void', 'punch', 'seal'] as const).map((form) => formButton(form, site, lang, false, files))
  return { ...message, blocks: [...message.blocks, { type: 'actions', elements }] }
}

async function shortcut(delivery: Delivery, callbackId: string, ports: Ports, places: Places): Promise<Pressed> {
  const site = delivery.channel === null ? null : await places.siteOfChannel(delivery.workspace, delivery.channel)
  const form = callbackId.replace(/^form:/, '')
  const how = await preferred(delivery, site, ports)
  const { talk } = texts[how.lang]
  if (site === null || !isForm(form))
    return { kind: 'message', message: plainMessage(isForm(form) ? `${talk.noSites} ${talk.howToBegin}` : talk.gone) }
  return { kind: 'form', view: formView(form, { site, channel: delivery.channel, files: (delivery.files ?? []).slice(0, mostPhotos), ...how }) }
}

/** A photo whose bytes are here, or are not: kept, or said why not. What was said with it stands either way. */
async function photo(delivery: Delivery, wanted: WantedPhoto, fetched: FetchedPhoto, ports: Ports): Promise<Message> {
  const { lang } = await preferred(delivery, wanted.site, ports)
  const ask = await askFor({ ...delivery, claim: null }, '', wanted.site, ports)
  const kept = await keepPhoto(ask, wanted, fetched, ports)
  const { photo: words } = texts[lang].closing
  const message = plainMessage(kept.kind === 'kept' ? `${words.kept(shownBy(wanted, lang))} (${kept.id})` : words.notKept(words.problems[kept.why]))
  if (kept.kind === 'kept') return { ...message, to: 'channel' }
  const again = kept.why === 'away' ? askAgain(wanted) : null
  if (again === null) return message
  return { ...message, blocks: [...message.blocks, { type: 'actions', elements: [sayButton('photo', again, wanted.site, lang, true)] }] }
}

function shownBy({ subject }: WantedPhoto, lang: Lang): string {
  const [kind, name] = subject.split(':')
  const { probe, closing } = texts[lang]
  if (kind === 'void') return probe.number(Number(name))
  return kind === 'punch' ? closing.photo.punch(Number(name)) : closing.photo.day
}

/** The words that name a photo once more; null where there are none without saying something else again. */
function askAgain({ subject, file }: WantedPhoto): string | null {
  const [kind, name] = subject.split(':')
  if (kind === 'void') return `probe ${name} photo ${file}`
  return kind === 'punch' ? `punch ${name} photo ${file}` : null
}

async function press(delivery: Delivery, actionId: string, value: string, ports: Ports): Promise<Pressed> {
  const button = readButton(value)
  if (button === null) return { kind: 'message', message: plainMessage(texts[delivery.lang ?? ports.lang].talk.gone) }
  const [form = '', ...files] = button.what.split('|')
  if (actionId.startsWith('form:') && isForm(form)) {
    const how = await preferred(delivery, button.site, ports)
    return { kind: 'form', view: formView(form, { site: button.site, channel: delivery.channel, files, ...how }) }
  }
  const ask = await askFor(delivery, button.what, button.site, ports)
  return { kind: 'message', message: messageOf(await respond(ask, ports), ask.log) }
}

async function submit(delivery: Delivery, callbackId: string, metadata: string, values: FormValues, ports: Ports): Promise<Submitted> {
  const context = readContext(metadata)
  if (context === null || !isForm(callbackId)) {
    return { kind: 'message', message: plainMessage(texts[delivery.lang ?? ports.lang].talk.gone), channel: delivery.channel }
  }
  const form = forms[callbackId]
  const phrases = [...form.phrases(values, context.units), ...context.files.map((file): Phrase => ({ block: 'photos', words: `photo ${file}` }))]
  const words = [form.command, ...phrases.map((phrase) => phrase.words)].join(' ')
  const ask = await askFor({ ...delivery, lang: context.lang, units: context.units }, words, context.site, ports)
  const replied = await respond(ask, ports)
  const { reply } = replied
  if (reply.ok || reply.error === null) return { kind: 'message', message: messageOf(replied, ask.log), channel: context.channel }
  const { word, message } = reply.error
  const block = phrases.find((phrase) => word !== null && phrase.words.toLowerCase().includes(word.toLowerCase()))?.block ?? phrases[0]?.block
  const first = form.blocks(texts[context.lang].talk, context.units)[0] as { block_id?: string } | undefined
  return { kind: 'errors', errors: { [block ?? first?.block_id ?? 'form']: message } }
}

/** Language and units: chosen for this delivery, else the person's, else the site's. */
async function preferred(delivery: Delivery, site: string | null, ports: Ports): Promise<{ lang: Lang; units: Units }> {
  const person = await ports.store.person(delivery.workspace, delivery.user)
  const view = site === null ? null : await ports.store.view({ workspace: delivery.workspace, site })
  const settings = view === null ? null : await settingsOf(view)
  return {
    lang: delivery.lang ?? person.lang ?? settings?.lang ?? ports.lang,
    units: delivery.units ?? person.units ?? settings?.units ?? ports.units
  }
}

/** `acting`: the person's words are logged; one who only reads gets no buttons that log. */
function messageOf({ reply, files }: Replied, acting: boolean): Message {
  const buttons = acting ? buttonsUnder(reply) : null
  const to = reply.ok && !forAsker.has(reply.command) ? 'channel' : 'asker'
  return { text: reply.text, blocks: buttons === null ? reply.blocks : [...reply.blocks, buttons], to, files, photos: acting ? wantedIn(reply) : [] }
}

function plainMessage(text: string): Message {
  const block: KnownBlock = { type: 'section', text: { type: 'plain_text', text, emoji: false } }
  return { text, blocks: [block], to: 'asker', files: [] }
}

function emptyHome({ blocks }: Message) {
  return { type: 'home' as const, blocks: [...blocks] }
}

function isForm(id: string): id is FormId {
  return (formIds as readonly string[]).includes(id)
}
