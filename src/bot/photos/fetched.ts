/** What a transport brings of a photo: its bytes with their SHA-256, or why there are none. */
export type FetchedPhoto =
  | { readonly kind: 'bytes'; readonly bytes: Uint8Array; readonly base64: string; readonly sha256: string }
  | { readonly kind: 'failed'; readonly why: 'away' | 'not-found' | 'too-large' }
