import type { ReadDb, WriteDb } from '../database.ts'

/** Where one kind of editable record is kept. `T` is the record without what the table itself knows. */
export interface RecordTable<T> {
  /** The record's value, or null when it isn't there. */
  readonly get: (db: ReadDb, at: RecordAddress) => T | null
  /** Sets free what has to be unique in a job, before the values of one step are written; for kinds that have such. */
  readonly release?: (db: WriteDb, at: RecordAddress) => void
  /** Writes the value; null removes the record. */
  readonly put: (db: WriteDb, at: RecordAddress, value: T | null) => void
  /** Checks a value and brings it into the form in which it is kept. */
  readonly parse: (value: unknown) => T
}

export interface RecordAddress {
  readonly jobId: string
  readonly id: string
}
