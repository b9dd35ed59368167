import { verifyLibrary } from '../library/verify-library.ts'
import { inTransaction, row } from '../store/database.ts'
import { writeSetting } from '../store/settings.ts'
import { z } from 'zod'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'

/** The library as a whole: what it is, who works in it, and whether it is sound. */
export function libraryArea(world: DeskWorld): Area<'library'> {
  const { db, layout } = world.library
  const count = (sql: string) => z.object({ n: z.number() }).parse(row(db, sql)).n
  return {
    'library.info': () => ({
      folder: layout.folder,
      program: `Battenbook ${world.programVersion}`,
      jobs: count('select count(*) as n from jobs'),
      photos: count('select count(*) as n from photos'),
      operator: world.operator(),
      drop: world.drop,
    }),
    'library.set-operator': ({ operator }) => {
      inTransaction(db, (write) => writeSetting(write, 'operator', operator))
      return {}
    },
    'library.verify': async () => {
      const check = await verifyLibrary(world.library)
      return { ...check, differences: [...check.differences] }
    },
  }
}
