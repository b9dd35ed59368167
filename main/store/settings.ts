import { z } from 'zod'
import { row, run, type ReadDb, type WriteDb } from './database.ts'

/** A setting of the library, or null when it was never set. */
export function readSetting(db: ReadDb, name: 'operator'): string | null {
  const found = row(db, 'select value from settings where name = :name', { name })
  return found === null ? null : z.object({ value: z.string() }).parse(found).value
}

/** Sets a setting of the library. */
export function writeSetting(db: WriteDb, name: 'operator', value: string): void {
  run(db, 'insert into settings (name, value) values (:name, :value) on conflict (name) do update set value = :value', {
    name,
    value,
  })
}
