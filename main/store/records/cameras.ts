import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import { cameraClockSchema, cameraSchema, type Camera, type CameraClock } from '../../../app/evidence/camera.ts'
import type { CameraId } from '../../../app/job/ids.ts'
import { row, rows, run, type ReadDb, type WriteDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

const cameraRowSchema = z.object({
  id: z.string(),
  make: z.string(),
  model: z.string(),
  serial: z.string(),
  clock: z.string(),
})

/** A camera's clock: the only thing about a camera that people set. */
export const cameraClockTable: RecordTable<CameraClock> = {
  get: (db, { jobId, id }) => {
    const found = row(db, 'select clock from cameras where id = :id and job_id = :jobId', { id, jobId })
    return found === null
      ? null
      : fromJson(cameraClockSchema, z.object({ clock: z.string() }).parse(found).clock, 'camera clock')
  },
  put: (db, { jobId, id }, clock) => {
    if (clock === null) refuse('invalid', 'A camera stays in the job as long as its photos do.')
    const written = run(db, 'update cameras set clock = :clock where id = :id and job_id = :jobId', {
      id,
      jobId,
      clock: JSON.stringify(clock),
    })
    if (written === 0) refuse('not-found', 'This camera is not in the job.')
  },
  parse: (value) => cameraClockSchema.parse(value),
}

/** The cameras of a job, by make and model. */
export function listCameras(db: ReadDb, jobId: string): Camera[] {
  return rows(
    db,
    'select id, make, model, serial, clock from cameras where job_id = :jobId order by make, model, serial',
    { jobId },
  ).map((found) => {
    const { clock, ...camera } = cameraRowSchema.parse(found)
    return cameraSchema.parse({ ...camera, clock: fromJson(cameraClockSchema, clock, 'camera clock') })
  })
}

/** The camera with this make, model and serial, added when it is new; null when the file names no camera at all. */
export function cameraFor(
  db: WriteDb,
  jobId: string,
  { camera, newId }: { camera: { make: string; model: string; serial: string }; newId: () => string },
): CameraId | null {
  const { make, model, serial } = camera
  if (make === '' && model === '' && serial === '') return null
  run(
    db,
    `insert into cameras (id, job_id, make, model, serial, clock) values (:id, :jobId, :make, :model, :serial, :clock)
     on conflict do nothing`,
    { id: newId(), jobId, make, model, serial, clock: JSON.stringify(cameraClockSchema.parse({})) },
  )
  const found = row(
    db,
    'select id from cameras where job_id = :jobId and make = :make and model = :model and serial = :serial',
    {
      jobId,
      make,
      model,
      serial,
    },
  )
  return cameraSchema.shape.id.parse(z.object({ id: z.string() }).parse(found).id)
}
