import { rm } from 'node:fs/promises'
import { refuse } from '../../app/contract/app-error.ts'
import type { PlanImagePatch } from '../../app/contract/edits.ts'
import type { ParsedInput } from '../../app/contract/contract.ts'
import { planImageIdSchema, type JobId, type PlanImageId } from '../../app/job/ids.ts'
import type { PlanFrame, PlanPoint } from '../../app/job/places.ts'
import { wrapDegrees } from '../../app/roof/angles.ts'
import { layPlanImage, planImageSchema, type PlanImage } from '../../app/roof/plan-image.ts'
import { takeInSupporting } from '../library/intake/take-in-supporting.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { facetTable, planImageTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange, editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { intakeFiles, uploadFolder } from './intake-area.ts'
import { onlyGiven } from './only-given.ts'
import { needJob, needJobLayout } from './snapshot.ts'

/** Images under the plan. */
export function planImagesArea(world: DeskWorld): Area<'plan-images'> {
  return {
    'plan-images.add': (asked) => addImage(world, asked),
    'plan-images.save': ({ jobId, id, set }) =>
      editJob(world, jobId, (db) => {
        const known = needImage(db, jobId, id)
        const patch = onlyGiven(set)
        const after = planImageSchema.parse({ ...known, ...patch })
        const laid = layPlanImage(after, needJob(db, jobId).job.frame.upAzimuthDeg)
        if (laid.kind === 'refused') refuse('invalid', laid.sentence, { about: 'knownLine' })
        return {
          summary: `${changeWords(patch)} "${after.label}"`,
          writes: [write(after), ...(patch.isShown === true ? hideOthers(db, jobId, id) : [])],
          result: {},
        }
      }),
    'plan-images.remove': ({ jobId, id }) =>
      editJob(world, jobId, (db) => ({
        summary: `Take the image "${needImage(db, jobId, id).label}" off the plan`,
        writes: [{ record: 'plan-image', id, after: null }],
        result: {},
      })),
  }
}

async function addImage(
  world: DeskWorld,
  { jobId, from, about }: ParsedInput<'plan-images.add'>,
): Promise<{ id: PlanImageId }> {
  const { db } = world.library
  const { job } = needJob(db, jobId)
  try {
    const [waiting, ...others] = await intakeFiles(world, from)
    if (waiting === undefined || others.length > 0)
      refuse('invalid', 'Choose one picture at a time.', { about: 'from' })
    const picture = await takeInSupporting(world.library, jobId, {
      places: needJobLayout(world.library, jobId),
      waiting,
      actor: world.operator(),
      now: world.now,
      newId: world.newId,
    })
    const there = planImageTable.list(db, jobId).find(({ file }) => file.id === picture.file.id)
    if (there !== undefined) refuse('conflict', `This picture is under the plan already, as "${there.label}".`)
    return editJob(world, jobId, (read) => {
      const image = planImageSchema.parse({
        ...about,
        ...picture,
        id: planImageIdSchema.parse(world.newId()),
        // What is seen from above is mostly handed out with north up; a sketch is mostly drawn the way the plan is.
        imageUpAzimuthDeg: about.kind === 'sketch' ? job.frame.upAzimuthDeg : 0,
        held: { image: { x: picture.widthPx / 2, y: picture.heightPx / 2 }, plan: middleOfRoof(read, jobId) },
      })
      return {
        summary: `Lay the image "${image.label}" under the plan`,
        writes: [write(image), ...hideOthers(read, jobId, image.id)],
        result: { id: image.id },
      }
    })
  } finally {
    // The file may have come in even where the rest was refused.
    announceChange(world, jobId)
    if (from.kind === 'upload') await rm(uploadFolder(world, from.uploadId), { recursive: true, force: true })
  }
}

/** Images when the sheet's direction changes: they stay under what was drawn over them, so the way they point turns with it. */
export function planImagesInFrame(db: ReadDb, jobId: JobId, frame: PlanFrame): readonly Write[] {
  const turnDeg = frame.upAzimuthDeg - needJob(db, jobId).job.frame.upAzimuthDeg
  if (turnDeg === 0) return []
  return planImageTable
    .list(db, jobId)
    .map((image) => write({ ...image, imageUpAzimuthDeg: wrapDegrees(image.imageUpAzimuthDeg + turnDeg) }))
}

function write(image: PlanImage): Write {
  return { record: 'plan-image', id: image.id, after: image }
}

function hideOthers(db: ReadDb, jobId: string, id: string): readonly Write[] {
  return planImageTable
    .list(db, jobId)
    .filter((image) => image.id !== id && image.isShown)
    .map((image) => write({ ...image, isShown: false }))
}

const changeVerbs: readonly (readonly [keyof PlanImagePatch, string])[] = [
  ['knownLine', 'Scale the image'],
  ['imageUpAzimuthDeg', 'Turn the image'],
  ['held', 'Move the image'],
  ['opacityPercent', 'Change how strongly the plan shows the image'],
  ['kind', 'Say what kind of picture the image is:'],
  ['label', 'Name the image'],
  ['source', 'Say where the image comes from:'],
]

/** What is changed, where it is one thing. */
function changeWords(patch: Partial<PlanImagePatch>): string {
  if (patch.isShown !== undefined) return patch.isShown ? 'Show the image' : 'Hide the image'
  const [first, ...more] = changeVerbs.filter(([field]) => patch[field] !== undefined)
  return first === undefined || more.length > 0 ? 'Change the image' : first[1]
}

function middleOfRoof(db: ReadDb, jobId: string): PlanPoint {
  const corners = facetTable.list(db, jobId).flatMap((facet) => facet.outline)
  if (corners.length === 0) return { xFt: 0, yFt: 0 }
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2
  return { xFt: middle(corners.map(({ xFt }) => xFt)), yFt: middle(corners.map(({ yFt }) => yFt)) }
}

function needImage(db: ReadDb, jobId: string, id: string): PlanImage {
  return planImageTable.get(db, { jobId, id }) ?? refuse('not-found', 'This image is no longer under the plan.')
}
