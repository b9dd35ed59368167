import { findChainBreak } from '../../app/evidence/log-chain.ts'
import { logEntrySchema, type LogEntry } from '../../app/evidence/log-entry.ts'
import { KEPT_BACK, keptBackHashes } from '../../app/packet/kept-back.ts'
import { filesDigest, readSeal } from '../../app/packet/seal.ts'
import { readBundle, type BundleContent } from './read-bundle.ts'
import { MANIFEST } from './write-bundle.ts'

/** What a check of a bundle looked at; `problems` is empty when it is sound and otherwise names the first difference. */
export interface BundleCheck {
  readonly files: number
  readonly entries: number
  readonly problems: readonly string[]
}

/** Folders whose files are the evidence itself, tied to the PDF by its seal. */
const EVIDENCE = /^(originals|stills|attachments)\//

/**
 * Checks an evidence bundle: every file against the manifest and the other way round, the evidence log from its first
 * entry, and the PDF's seal against log and files.
 *
 * @throws AppFailure `not-verified` when the file is no sound zip
 */
export async function verifyBundle(path: string): Promise<BundleCheck> {
  const content = await readBundle(path, new Set([MANIFEST, 'log.jsonl', 'packet.pdf', KEPT_BACK]))
  const manifest = readManifest(content.kept.get(MANIFEST)?.toString('utf8') ?? '')
  const log = readLog(content.kept.get('log.jsonl')?.toString('utf8') ?? '')
  const problem = manifestProblem(content, manifest) ?? logProblem(log) ?? sealProblem(content, log)
  return { files: content.hashes.size, entries: log.entries.length, problems: problem === null ? [] : [problem] }
}

function readManifest(text: string): ReadonlyMap<string, string> {
  const lines = text.split('\n').filter((line) => line !== '')
  return new Map(
    lines.flatMap((line): [string, string][] => {
      const [, escaped, sha256, name] = /^(\\?)([0-9a-f]{64}) [ *](.+)$/.exec(line) ?? []
      if (sha256 === undefined || name === undefined) return []
      return [
        [escaped === '' ? name : name.replace(/\\(.)/g, (_, c: string) => ({ n: '\n', r: '\r' })[c] ?? c), sha256],
      ]
    }),
  )
}

function manifestProblem({ hashes }: BundleContent, manifest: ReadonlyMap<string, string>): string | null {
  if (!hashes.has(MANIFEST) || manifest.size === 0) return `The bundle has no readable ${MANIFEST}.`
  for (const [name, sha256] of manifest) {
    const actual = hashes.get(name)
    if (actual === undefined) return `${name} is in the manifest but not in the bundle.`
    if (actual !== sha256) return `${name} differs from the manifest: the file has changed.`
  }
  const extra = [...hashes.keys()].find((name) => name !== MANIFEST && !manifest.has(name))
  if (extra !== undefined) return `${extra} is in the bundle but not in the manifest.`
  for (const name of ['packet.pdf', 'log.jsonl']) if (!manifest.has(name)) return `${name} is missing.`
  return null
}

interface ReadLog {
  readonly entries: readonly LogEntry[]
  /** Line that is no log entry, counted from 1; null when all are. */
  readonly badLine: number | null
}

function readLog(text: string): ReadLog {
  const entries: LogEntry[] = []
  for (const [index, line] of text.split('\n').entries()) {
    if (line === '') continue
    const entry = logEntrySchema.safeParse(parseOrNull(line))
    if (!entry.success) return { entries, badLine: index + 1 }
    entries.push(entry.data)
  }
  return { entries, badLine: null }
}

function parseOrNull(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return null
  }
}

function logProblem({ entries, badLine }: ReadLog): string | null {
  if (badLine !== null) return `log.jsonl, line ${badLine}: this is no entry of an evidence log.`
  return findChainBreak(entries)?.why ?? null
}

function sealProblem({ kept, hashes }: BundleContent, log: ReadLog): string | null {
  const seal = readSeal(kept.get('packet.pdf')?.toString('latin1') ?? '')
  if (seal === null) return 'packet.pdf carries no seal of a log and files.'
  if (seal.logHead !== log.entries.at(-1)?.hash)
    return 'packet.pdf was made from another state of the evidence log than log.jsonl.'
  const keptBack = keptBackHashes(kept.get(KEPT_BACK)?.toString('utf8') ?? '')
  if (seal.keptBackDigest !== (keptBack.length === 0 ? null : filesDigest(keptBack)))
    return `packet.pdf was made for another list of originals kept at the office than ${KEPT_BACK}.`
  const evidence = [...hashes].filter(([name]) => EVIDENCE.test(name)).map(([, sha256]) => sha256)
  return seal.filesDigest === filesDigest([...evidence, ...keptBack])
    ? null
    : 'packet.pdf was made for another set of originals and attachments.'
}
