import type { ComponentEntry } from '../entries.ts'

/** Parts that belong to an asphalt shingle roof. */
export const shingleComponents = {
  'shingle-field': {
    label: 'Field shingle',
    one: 'field shingle',
    many: 'field shingles',
    meaning: 'A shingle in the body of a slope.',
    coverings: ['shingle'],
    tagKey: 'sh',
  },
  'shingle-tab': {
    label: 'Shingle tab',
    one: 'shingle tab',
    many: 'shingle tabs',
    meaning: 'The exposed part of a shingle between its cut-outs.',
    coverings: ['shingle'],
    tagKey: 't',
  },
  'seal-strip': {
    label: 'Seal strip',
    one: 'seal strip',
    many: 'seal strips',
    meaning: 'The factory line of adhesive that bonds a shingle to the one below.',
    coverings: ['shingle'],
    tagKey: 'se',
  },
  'hip-ridge-shingle': {
    label: 'Hip or ridge shingle',
    one: 'hip or ridge shingle',
    many: 'hip and ridge shingles',
    meaning: 'A shingle bent over a hip or ridge.',
    coverings: ['shingle'],
    tagKey: 'r',
  },
  'starter-strip': {
    label: 'Starter strip',
    one: 'starter strip',
    many: 'starter strips',
    meaning: 'The strip under the first course at an eave or rake.',
    coverings: ['shingle'],
    tagKey: 'st',
  },
} as const satisfies Record<string, ComponentEntry>
