import { createHash } from 'node:crypto'
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import canonicalize from 'canonicalize'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { digestOf, findChainBreak, nextEntry } from './log-chain.ts'
import { logEntrySchema, type LogEntry, type LogEvent } from './log-entry.ts'

/** SHA-256 of a text's UTF-8 bytes, by Node's own OpenSSL and not by the library that the program uses. */
const opensslSha256 = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex')

describe('SHA-256 as the program computes it (NIST FIPS 180-4 examples)', () => {
  it.each([
    ['an empty message', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['"abc"', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      '448 bits',
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a million "a"', 'a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('%s', (_what, message, digest) => {
    expect(bytesToHex(sha256(utf8ToBytes(message)))).toBe(digest)
  })
})

describe('the canonical form that is hashed', () => {
  it('writes literals, numbers and strings as RFC 8785, section 3.2.2 does', () => {
    const sample: unknown = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`)
    expect(digestOf(sample)).toBe(
      opensslSha256(
        String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
      ),
    )
  })

  it('is UTF-8: the bytes of RFC 8785, section 3.2.4', () => {
    const bytes =
      '7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333333333333333332e33333333' +
      '3333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c' +
      '5c5c5c5c222f227d'
    const value = {
      numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 1e-27],
      string: '\u20ac$\u000f\nA\'B"\\\\"/',
      literals: [null, true, false],
    }
    expect(digestOf(value)).toBe(createHash('sha256').update(Buffer.from(bytes, 'hex')).digest('hex'))
  })

  it('sorts names by UTF-16 code units, RFC 8785, section 3.2.3', () => {
    const sample = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    }
    const inOrder = [
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]
    const written = canonicalize(sample) ?? ''
    expect(Object.values(sample).toSorted((a, b) => written.indexOf(a) - written.indexOf(b))).toEqual(inOrder)
    expect(digestOf(sample)).toBe(opensslSha256(written))
  })

  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the double %s as %s (RFC 8785, appendix B)', (bits, text) => {
    expect(digestOf(Buffer.from(bits, 'hex').readDoubleBE())).toBe(opensslSha256(text))
  })

  it('refuses what JSON cannot hold (RFC 8785, section 3.2.2.3)', () => {
    expect(() => digestOf(NaN)).toThrow('NaN')
    expect(() => digestOf({ liftIn: Infinity })).toThrow('Infinity')
    expect(() => digestOf(undefined)).toThrow('Only values that JSON can hold')
  })

  it('is the same after a value was written as JSON and read again', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(digestOf(JSON.parse(JSON.stringify(value)))).toBe(digestOf(value))
      }),
    )
  })
})

const digest = fc.stringMatching(/^[0-9a-f]{64}$/)
const event: fc.Arbitrary<LogEvent> = fc.oneof(
  fc.record({ type: fc.constant('job-opened' as const), number: fc.string() }),
  fc.record({
    type: fc.constant('photo-taken-in' as const),
    photoId: fc.string(),
    number: fc.nat(),
    fileName: fc.string({ unit: 'binary' }),
    sha256: digest,
    bytes: fc.nat(),
  }),
  fc.record({
    type: fc.constant('edited' as const),
    summary: fc.string({ unit: 'grapheme' }),
    changes: fc.array(
      fc.record({
        record: fc.constantFrom('facet' as const, 'finding' as const),
        id: fc.string(),
        before: fc.option(digest),
        after: fc.option(digest),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  }),
  fc.record({ type: fc.constant('problem-overruled' as const), problem: fc.string(), reason: fc.string() }),
)
const happened = fc.record({ atMs: fc.nat(), actor: fc.string(), event })
const chain = fc.array(happened, { minLength: 3, maxLength: 12 }).map((events) => chainOf(events))

function chainOf(events: readonly Parameters<typeof nextEntry>[1][]): LogEntry[] {
  const entries: LogEntry[] = []
  for (const one of events) entries.push(nextEntry(entries.at(-1) ?? null, one))
  return entries
}

describe('a log that nobody touched', () => {
  it('is whole, and so is an empty one', () => {
    expect(findChainBreak([])).toBeNull()
    fc.assert(
      fc.property(chain, (entries) => {
        expect(findChainBreak(entries)).toBeNull()
        expect(
          findChainBreak(entries.map((entry) => logEntrySchema.parse(JSON.parse(JSON.stringify(entry))))),
        ).toBeNull()
      }),
    )
  })

  it('counts from 1, and each entry names the hash of the one before', () => {
    const [first, second] = chainOf([
      { atMs: 1, actor: 'A', event: { type: 'job-opened', number: '1' } },
      { atMs: 2, actor: 'A', event: { type: 'problem-overruled', problem: 'p', reason: 'r' } },
    ])
    expect(first).toMatchObject({ seq: 1, previous: null })
    expect(second).toMatchObject({ seq: 2, previous: first?.hash })
    const { hash, ...body } = second ?? { hash: '' }
    expect(hash).toBe(opensslSha256(canonicalize(body) ?? ''))
  })
})

/** What can be done to a log of `n` entries, and the entry at which it is then broken. */
const tampering = fc.record({
  entries: chain,
  kind: fc.constantFrom('change', 'remove', 'insert-copy', 'insert-forged', 'swap'),
  at: fc.nat(),
  other: fc.nat(),
})

describe('tampering with a log', () => {
  it('is found 1,000 times of 1,000, and the first entry that does not fit is named', () => {
    fc.assert(
      fc.property(tampering, ({ entries, kind, at, other }) => {
        const done = tamper(entries, { kind, at, other })
        expect(findChainBreak(done.entries)?.seq).toBe(done.brokenSeq)
        expect(findChainBreak(done.entries)?.why).toContain(String(done.brokenSeq))
      }),
      { numRuns: 1000 },
    )
  })

  it('is found in whichever field and at whichever character it happens', () => {
    const entries = chainOf([
      { atMs: 1_700_000_000_000, actor: 'Ada', event: { type: 'job-opened', number: '2026-0001' } },
      { atMs: 1_700_000_001_000, actor: 'Ada', event: { type: 'problem-overruled', problem: 'Dark', reason: 'Night' } },
      { atMs: 1_700_000_002_000, actor: 'Ada', event: { type: 'job-opened', number: '2026-0001' } },
    ])
    for (const [index, entry] of entries.entries()) {
      const line = JSON.stringify(entry)
      for (let place = 0; place < line.length; place++) {
        const changed = parsed(line.slice(0, place) + (line[place] === '1' ? '2' : '1') + line.slice(place + 1))
        // A line that is no entry any more is found when it is read.
        if (changed === null) continue
        expect(findChainBreak(entries.with(index, changed))?.seq, `character ${place} of entry ${index + 1}`).toBe(
          index + 1,
        )
      }
    }
  })

  it('at the very end shows in the head hash alone: fewer entries are a whole, shorter log', () => {
    const entries = chainOf([
      { atMs: 1, actor: 'A', event: { type: 'job-opened', number: '1' } },
      { atMs: 2, actor: 'A', event: { type: 'job-opened', number: '2' } },
    ])
    expect(findChainBreak(entries.slice(0, 1))).toBeNull()
    expect(entries.slice(0, 1).at(-1)?.hash).not.toBe(entries.at(-1)?.hash)
  })
})

function parsed(line: string): LogEntry | null {
  try {
    return logEntrySchema.parse(JSON.parse(line))
  } catch {
    return null
  }
}

function tamper(
  entries: readonly LogEntry[],
  how: { kind: string; at: number; other: number },
): { entries: LogEntry[]; brokenSeq: number } {
  const at = how.at % (entries.length - 1)
  const entry = entries[at] ?? fail()
  switch (how.kind) {
    case 'change':
      return { entries: entries.with(at, changedEntry(entry, how.other)), brokenSeq: at + 1 }
    case 'remove':
      return { entries: entries.toSpliced(at, 1), brokenSeq: at + 1 }
    case 'insert-copy':
      return { entries: entries.toSpliced(at + 1, 0, entry), brokenSeq: at + 2 }
    case 'insert-forged': {
      const forged = nextEntry(entry, { atMs: how.other, actor: 'Nobody', event: { type: 'job-opened', number: 'F' } })
      return { entries: entries.toSpliced(at + 1, 0, forged), brokenSeq: at + 3 }
    }
    default: {
      const second = at + 1 + (how.other % (entries.length - 1 - at))
      return { entries: entries.with(at, entries[second] ?? fail()).with(second, entry), brokenSeq: at + 1 }
    }
  }
}

/** The entry with one value changed somewhere: a digit of a number, or one character of a text. */
function changedEntry(entry: LogEntry, pick: number): LogEntry {
  const leaves: { holder: Record<string, unknown>; name: string }[] = []
  const copy: Record<string, unknown> = structuredClone({ ...entry })
  const collect = (holder: object) => {
    for (const [name, value] of Object.entries(holder)) {
      if (typeof value === 'object' && value !== null) collect(value)
      else leaves.push({ holder: holder as Record<string, unknown>, name })
    }
  }
  collect(copy)
  const { holder, name } = leaves[pick % leaves.length] ?? fail()
  const value = holder[name]
  holder[name] = typeof value === 'number' ? value + 1 : changedText(typeof value === 'string' ? value : '', pick)
  return copy as unknown as LogEntry
}

function changedText(text: string, pick: number): string {
  if (text === '') return 'x'
  const at = pick % text.length
  return text.slice(0, at) + (text[at] === 'x' ? 'y' : 'x') + text.slice(at + 1)
}

function fail(): never {
  throw new Error('The generated log is shorter than it should be.')
}
