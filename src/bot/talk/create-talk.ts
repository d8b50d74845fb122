import type { Button } from '@slack/types'
import type { Lang } from '../answer.js'
import type { Ports } from '../context.js'
import { type FormId, formIds } from '../forms/form-id.js'
import type { FetchedPhoto } from '../photos/fetched.js'
import { keepPhoto } from '../photos/keep-photo.js'
import type { WantedPhoto } from '../photos/wanted.js'
import { respond } from '../respond.js'
import { texts } from '../text/index.js'
import { formAsked } from '../words/form-words.js'
import { readWords } from '../words/read.js'
import { askFor, type Places } from './asks.js'
import { formButton, nowhere, readButton, sayButton } from './buttons.js'
import { detailsOf } from './details.js'
import { readContext } from './form-view.js'
import { homeView } from './home.js'
import { messageOf, plainMessage, withButtons } from './message.js'
import { openForm } from './open-form.js'
import { preferred } from './preferred.js'
import { failedForm, submitForm } from './submit.js'
import type { Delivery, FormValues, Message, Pressed, Submitted, Talk } from './talk.js'

/** The bot for transports: one dispatcher behind messages, buttons, forms and home. */
export function createTalk(ports: Ports, places: Places): Talk {
  const failed = (delivery: Delivery, error: unknown): Message => {
    const ref = ports.report(error, { user: delivery.user, via: delivery.via })
    return plainMessage(texts[delivery.lang ?? ports.lang].talk.failed(ref))
  }
  const guarded = async <T>(delivery: Delivery, run: () => Promise<T>, otherwise: (message: Message) => T | Promise<T>): Promise<T> => {
    try {
      return await run()
    } catch (error) {
      return await otherwise(failed(delivery, error))
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
        async (message) =>
          (isForm(callbackId) ? await failedForm(callbackId, delivery, metadata, message.text, ports) : null) ?? {
            kind: 'message',
            message,
            channel: delivery.channel
          }
      ),
    home: (delivery) => guarded(delivery, async () => homeView(delivery, await preferred(delivery, null, ports), ports), emptyHome),
    failed,
    working: (delivery) => plainMessage(texts[delivery.lang ?? ports.lang].talk.working)
  }
}

async function say(delivery: Delivery, text: string, ports: Ports, places: Places): Promise<Message> {
  const site = delivery.channel === null ? null : await places.siteOfChannel(delivery.workspace, delivery.channel)
  if (text === '' && (delivery.files ?? []).length > 0) return photosAlone(delivery, site, ports)
  const asked = formAsked(text)
  if (asked?.named) return formByName(asked.form, delivery, site, ports)
  const ask = await askFor(delivery, withPhotos(text, delivery), site, ports)
  const replied = await respond(ask, ports)
  const message = messageOf(replied, ask.log, ask.claim)
  // Of a command that only lacks its words the form is what helps; the words come along for those who cannot open one.
  const helps = asked !== null && (replied.reply.ok || replied.reply.error?.code === 'missing')
  const opened = helps ? await openForm(asked.form, site, delivery.files ?? [], delivery, ports) : null
  return opened?.kind === 'form' ? { ...message, form: opened.view } : message
}

/** A form that was asked for by its name: opened where that can be, else a button for it. */
async function formByName(form: FormId, delivery: Delivery, site: string | null, ports: Ports): Promise<Message> {
  const opened = await openForm(form, site, (delivery.files ?? []).slice(0, mostPhotos), delivery, ports)
  if (opened.kind === 'message') return opened.message
  const context = readContext(opened.view.private_metadata ?? '')
  const button = formButton(form, context?.site || nowhere, context?.lang ?? ports.lang, true)
  return { ...withButtons(plainMessage(opened.view.title.text), [button]), form: opened.view }
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
  return withButtons(
    message,
    (['void', 'punch', 'seal'] as const).map((form) => formButton(form, site, lang, false, files))
  )
}

async function shortcut(delivery: Delivery, callbackId: string, ports: Ports, places: Places): Promise<Pressed> {
  const site = delivery.channel === null ? null : await places.siteOfChannel(delivery.workspace, delivery.channel)
  const form = callbackId.replace(/^form:/, '')
  const { talk } = texts[(await preferred(delivery, site, ports)).lang]
  if (site === null && isForm(form)) return { kind: 'message', message: plainMessage(`${talk.noSites} ${talk.howToBegin}`) }
  if (isForm(form)) return openForm(form, site, (delivery.files ?? []).slice(0, mostPhotos), delivery, ports)
  return { kind: 'message', message: plainMessage(talk.gone) }
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
  return withButtons(message, [sayButton('photo', again, wanted.site, lang, true)])
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
  const site = button.site === nowhere ? null : button.site
  if (actionId.startsWith('form:') && isForm(form)) return openForm(form, site, files, delivery, ports)
  if (actionId === 'details') return { kind: 'message', message: await detailsOf(delivery, button.what, ports) }
  const ask = await askFor(delivery, button.what, site, ports)
  const replied = await respond(ask, ports)
  const message = messageOf(replied, ask.log, ask.claim)
  // What a void or an item can take now stands in the list.
  const list = replied.reply.error?.code === 'wrong-state' ? listButton(button.what, button.site, replied.reply.lang) : []
  return { kind: 'message', message: withButtons(message, list) }
}

/** The list that a void or an item stands in; none for other words. */
function listButton(what: string, site: string, lang: Lang): readonly Button[] {
  if (what.startsWith('punch ')) return [sayButton('punchList', 'punch list', site, lang, false)]
  return what.startsWith('probe ') ? [sayButton('list', 'probe list', site, lang, false)] : []
}

async function submit(delivery: Delivery, callbackId: string, metadata: string, values: FormValues, ports: Ports): Promise<Submitted> {
  const sent = isForm(callbackId) ? await submitForm(callbackId, delivery, metadata, values, ports) : null
  return sent ?? { kind: 'message', message: plainMessage(texts[delivery.lang ?? ports.lang].talk.gone), channel: delivery.channel }
}

function emptyHome({ blocks }: Message) {
  return { type: 'home' as const, blocks: [...blocks] }
}

function isForm(id: string): id is FormId {
  return (formIds as readonly string[]).includes(id)
}
