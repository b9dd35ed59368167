import type { CaseFile } from '../evidence/case-file.ts'
import { pieceSizeOf } from './piece-size-of.ts'
import { type Repair, repairAreaSqFt, repairOf } from './repair/repair.ts'
import { roofSections } from './roof-sections.ts'
import { type SectionShare, workShares } from './work-share.ts'

type Assessed = Pick<CaseFile, 'job' | 'facets' | 'findings' | 'assessment'>

/** The repair of a job by its findings and what people stated. */
export function jobRepair({ job, facets, findings, assessment }: Assessed): Repair {
  const piece = pieceSizeOf(job.sheet.covering)
  return repairOf({ facets, findings, piece, upAzimuthDeg: job.frame.upAzimuthDeg, assessment })
}

/** The share of work on every section of a job's roof; null while no rule is chosen. */
export function jobWorkShares(file: Assessed, repair: Repair): readonly SectionShare[] | null {
  const { job, facets, assessment } = file
  const { rule, sections, planned, earlier, workDate } = assessment
  if (rule === null) return null
  const piece = pieceSizeOf(job.sheet.covering)
  return workShares({
    rule,
    sections: roofSections(facets, sections, job.frame.upAzimuthDeg),
    facets,
    planned,
    earlier,
    workDate,
    repairSqFt: (facetId) =>
      repairAreaSqFt(
        repair.facets.find(({ facet }) => facet.id === facetId),
        piece,
      ),
  })
}
