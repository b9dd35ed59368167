import { digestOf } from '../evidence/log-chain.ts'

/** What ties a packet's PDF to its evidence log and its files: written into the PDF, checked by `verify`. */
export interface Seal {
  /** Hash of the newest log entry that the packet covers. */
  readonly logHead: string
  /** Digest over the hashes of all originals and attachments. */
  readonly filesDigest: string
  /** Digest over the hashes of originals that the bundle does not hold; null when it holds all. */
  readonly keptBackDigest: string | null
}

const PATTERN = /battenbook-seal log=([0-9a-f]{64}) files=([0-9a-f]{64})(?: kept-back=([0-9a-f]{64}))?/

/** Digest over a set of files by their SHA-256, whatever their order or names. */
export function filesDigest(hashes: readonly string[]): string {
  return digestOf(hashes.toSorted())
}

/** The seal as one line of text for the PDF's keywords. */
export function sealText({ logHead, filesDigest: files, keptBackDigest: keptBack }: Seal): string {
  return `battenbook-seal log=${logHead} files=${files}${keptBack === null ? '' : ` kept-back=${keptBack}`}`
}

/** Finds a seal in text; null when there is none. */
export function readSeal(text: string): Seal | null {
  const [, logHead, files, keptBack] = PATTERN.exec(text) ?? []
  if (logHead === undefined || files === undefined) return null
  return { logHead, filesDigest: files, keptBackDigest: keptBack ?? null }
}
