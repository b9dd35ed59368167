import Database from 'better-sqlite3'

declare const access: unique symbol

/** A connection that may only read. Every function that asks for this cannot write. */
export interface ReadDb {
  readonly [access]: 'read' | 'write'
  readonly connection: Database.Database
}

/** A connection inside a write: only `inTransaction` hands one out. */
export interface WriteDb extends ReadDb {
  readonly [access]: 'write'
}

const statements = new WeakMap<Database.Database, Map<string, Database.Statement>>()

function prepared(db: ReadDb, sql: string): Database.Statement {
  let bySql = statements.get(db.connection)
  if (bySql === undefined) statements.set(db.connection, (bySql = new Map()))
  let statement = bySql.get(sql)
  if (statement === undefined) bySql.set(sql, (statement = db.connection.prepare(sql)))
  return statement
}

type Value = string | number | bigint | Buffer | null
type Named = Readonly<Record<string, Value>>

/** All rows of a query. The caller checks their shape with a schema or a typed reader. */
export function rows(db: ReadDb, sql: string, values: Named = {}): unknown[] {
  return prepared(db, sql).all(values)
}

/** Rows one after another, for tables too long to hold. */
export function* eachRow(db: ReadDb, sql: string, values: Named = {}): Generator<unknown> {
  // A statement of its own: a cached one would stay busy while the caller asks something else in between.
  yield* db.connection.prepare(sql).iterate(values)
}

/** The first row of a query, or null. */
export function row(db: ReadDb, sql: string, values: Named = {}): unknown {
  return prepared(db, sql).get(values) ?? null
}

/** Runs a statement that changes rows; answers how many. */
export function run(db: WriteDb, sql: string, values: Named = {}): number {
  return prepared(db, sql).run(values).changes
}

/** Runs `work` in one transaction: all of it or, when it throws, none. `work` must not be asynchronous. */
export function inTransaction<T>(db: ReadDb, work: (db: WriteDb) => T): T {
  return db.connection
    .transaction(() => {
      const result = work(db as WriteDb)
      if (result instanceof Promise) throw new TypeError('A transaction cannot wait for a promise.')
      return result
    })
    .immediate()
}

/** Opens a database file with the settings that evidence needs: WAL, foreign keys, every commit synced. */
export function connect(path: string, nativeBinding?: string): ReadDb {
  const connection = new Database(path, nativeBinding === undefined ? {} : { nativeBinding })
  try {
    connection.pragma('journal_mode = WAL')
    connection.pragma('synchronous = FULL')
    connection.pragma('foreign_keys = ON')
    connection.pragma('busy_timeout = 5000')
  } catch (cause) {
    // A file that is no database is found out only here; left open it could not be moved away.
    connection.close()
    throw cause
  }
  return { connection } as ReadDb
}
