import { packetProblems } from '../../app/evidence/coverage.ts'
import type { PacketProblem } from '../../app/packet/problem.ts'
import type { ReadDb } from '../store/database.ts'
import { jobSnapshot } from './snapshot.ts'

/** What a job still lacks before its packet should issue. */
export function problemsOf(db: ReadDb, jobId: string): readonly PacketProblem[] {
  return packetProblems(jobSnapshot(db, jobId))
}
