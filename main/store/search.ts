import { z } from 'zod'
import { searchHitSchema, type SearchHit } from '../../app/contract/search.ts'
import { jobIdSchema } from '../../app/job/ids.ts'
import { closenessOf } from './search-closeness.ts'
import { rows, run, type ReadDb, type WriteDb } from './database.ts'

/** What can be found: the words of one record and how a hit on it is named. */
export interface Searchable {
  readonly kind: SearchHit['kind']
  readonly id: string
  readonly label: string
  readonly words: readonly string[]
}

/** Puts a record's words into the index, replacing what stood there. */
export function indexWords(db: WriteDb, jobId: string, item: Searchable): void {
  forgetWords(db, item)
  const words = item.words.filter((text) => text !== '').join('\n')
  if (words === '') return
  run(
    db,
    'insert into search_words (words, job_id, kind, record_id, label) values (:words, :jobId, :kind, :id, :label)',
    { words, jobId, kind: item.kind, id: item.id, label: item.label },
  )
  // "returning rowid" answers -1 for a virtual table.
  run(db, 'insert into search_rows (kind, record_id, word_row) values (:kind, :id, last_insert_rowid())', {
    kind: item.kind,
    id: item.id,
  })
}

/** Takes a record out of the index. */
export function forgetWords(db: WriteDb, { kind, id }: Pick<Searchable, 'kind' | 'id'>): void {
  run(
    db,
    'delete from search_words where rowid = (select word_row from search_rows where kind = :kind and record_id = :id)',
    { kind, id },
  )
  run(db, 'delete from search_rows where kind = :kind and record_id = :id', { kind, id })
}

/**
 * So many of the newest records that fit are weighed against each other. A search that fits more is too wide to look
 * through anyway, and weighing all of them would take longer the larger the library is.
 */
const MOST_WEIGHED = 400

const hitRowSchema = z.object({
  jobId: jobIdSchema,
  jobNumber: z.string(),
  kind: searchHitSchema.shape.kind,
  id: z.string(),
  label: z.string(),
  excerpt: z.string(),
  words: z.string(),
})

/** Records that hold every word of `text`; the last word may be unfinished. Best matches first, among the newest 400. */
export function findWords(
  db: ReadDb,
  { text, jobId, limit }: { text: string; jobId: string | null; limit: number },
): SearchHit[] {
  const words = text.match(/[\p{L}\p{N}\p{M}]+/gu) ?? []
  if (words.length === 0) return []
  const query = words.map((word, i) => (i === words.length - 1 ? `"${word}"*` : `"${word}"`)).join(' ')
  return rows(
    db,
    `select w.job_id as jobId, j.number as jobNumber, w.kind as kind, w.record_id as id, w.label as label,
       w.words as words, snippet(search_words, 0, '', '', ' ... ', 16) as excerpt
     from search_words w join jobs j on j.id = w.job_id
     where search_words match :query and (:jobId is null or w.job_id = :jobId)
     order by w.rowid desc limit ${MOST_WEIGHED}`,
    { query, jobId },
  )
    .map((found) => {
      const { words: text, ...hit } = hitRowSchema.parse(found)
      return { hit, closeness: closenessOf(words, text) }
    })
    .sort((a, b) => b.closeness - a.closeness)
    .slice(0, limit)
    .map(({ hit }) => hit)
}
