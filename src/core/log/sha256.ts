import { sha256 as digest } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'

/** SHA-256 (FIPS 180-4) of the UTF-8 bytes of a text, lower-case hex. */
export function sha256(text: string): string {
  return bytesToHex(digest(utf8ToBytes(text)))
}
