import { createCipheriv, createDecipheriv, createHash, randomBytes } from 'node:crypto'

export interface Sealed {
  readonly text: Buffer
  readonly tag: Buffer
}

const version = 'v1'
const ivBytes = 12
const tagBytes = 16

/**
 * AES-256-GCM, NIST SP 800-38D: key of 32 bytes, initialization vector of 12 bytes that is never used twice with a key, tag of 16
 * bytes. `about` is not hidden, but a text opens with the same one only.
 */
export function encrypt(key: Buffer, iv: Buffer, about: Buffer, text: Buffer): Sealed {
  const cipher = createCipheriv('aes-256-gcm', key, iv, { authTagLength: tagBytes })
  cipher.setAAD(about)
  const sealed = Buffer.concat([cipher.update(text), cipher.final()])
  return { text: sealed, tag: cipher.getAuthTag() }
}

/** The other way; null where key, `about`, text or tag are not those of `encrypt`. */
export function decrypt(key: Buffer, iv: Buffer, about: Buffer, { text, tag }: Sealed): Buffer | null {
  if (iv.length !== ivBytes || tag.length !== tagBytes) return null
  const decipher = createDecipheriv('aes-256-gcm', key, iv, { authTagLength: tagBytes })
  decipher.setAAD(about)
  decipher.setAuthTag(tag)
  try {
    return Buffer.concat([decipher.update(text), decipher.final()])
  } catch {
    return null
  }
}

/** Seals with the first of its keys, opens with any: so a key is changed by putting the new one in front. */
export interface Sealer {
  seal(about: string, text: string): string
  /** Null where no key opens it, or it was sealed about something else. */
  open(about: string, sealed: string): string | null
  /** Whether it was sealed with the first key. */
  isNewest(sealed: string): boolean
}

/** Keys of 32 bytes each, at least one. */
export function createSealer(keys: readonly Buffer[]): Sealer {
  const [newest] = keys
  if (newest === undefined || keys.some((key) => key.length !== 32)) throw new TypeError('a sealer needs keys of 32 bytes')
  const known = new Map(keys.map((key) => [nameOf(key), key]))
  return {
    seal: (about, text) => {
      const iv = randomBytes(ivBytes)
      const sealed = encrypt(newest, iv, Buffer.from(about), Buffer.from(text))
      return [version, nameOf(newest), iv.toString('base64url'), sealed.text.toString('base64url'), sealed.tag.toString('base64url')].join('.')
    },
    open: (about, sealed) => {
      const [made, name = '', iv = '', text = '', tag = '', ...more] = sealed.split('.')
      const key = known.get(name)
      if (made !== version || key === undefined || more.length > 0) return null
      const read = (part: string) => Buffer.from(part, 'base64url')
      return decrypt(key, read(iv), Buffer.from(about), { text: read(text), tag: read(tag) })?.toString('utf8') ?? null
    },
    isNewest: (sealed) => sealed.startsWith(`${version}.${nameOf(newest)}.`)
  }
}

/** Tells keys apart and gives nothing of them away. */
function nameOf(key: Buffer): string {
  return createHash('sha256').update('seamhand token key ').update(key).digest('hex').slice(0, 8)
}
