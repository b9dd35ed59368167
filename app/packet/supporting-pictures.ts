import { photoLabel } from '../evidence/photo.ts'
import { planImageKindWords, type PlanImage } from '../roof/plan-image.ts'
import { safeCell } from './csv-cell.ts'
import type { CsvTable } from './csv-table.ts'
import type { PacketInput } from './packet-input.ts'

/** A picture that lies under the plan: its file, and what a person says of it. */
export interface SupportingPicture {
  readonly fileName: string
  readonly bytes: number
  readonly sha256: string
  /** "Rendered picture “Site model”, from the designer's office; laid under the roof plan to draw over it". */
  readonly words: string
  readonly image: PlanImage
}

/** The pictures under the plan, each with its file; one whose file is not in the job is left off. */
export function supportingPictures({
  planImages,
  attachments,
  caseFile,
}: Pick<PacketInput, 'planImages' | 'attachments' | 'caseFile'>): readonly SupportingPicture[] {
  return planImages.flatMap((image) => {
    const photo = caseFile.photos.find(({ id }) => id === image.file.id)
    const file = photo?.file ?? attachments.find(({ id }) => id === image.file.id)?.file
    if (file === undefined) return []
    const also = photo === undefined ? '' : `; the same file is photo ${photoLabel(photo.number)}`
    const { fileName, bytes, sha256 } = file
    return [{ fileName, bytes, sha256, image, words: `${imageWords(image)}${also}` }]
  })
}

/** Kind, name and source of an image under the plan, as a list names it. */
function imageWords({ kind, label, source }: PlanImage): string {
  const from = source === '' ? 'source not stated' : `source: ${source}`
  return `${planImageKindWords[kind]} “${label}”, ${from}; laid under the roof plan to draw over it`
}

/** supporting-pictures.csv of an evidence bundle; null where no picture lies under the plan. */
export function supportingPicturesTable(input: Parameters<typeof supportingPictures>[0]): CsvTable | null {
  const pictures = supportingPictures(input)
  if (pictures.length === 0) return null
  return {
    name: 'supporting-pictures.csv',
    header: ['file', 'sha256', 'kind', 'name', 'source', 'used for'],
    rows: pictures.map(({ fileName, sha256, image }) =>
      [
        fileName,
        sha256,
        planImageKindWords[image.kind],
        image.label,
        image.source,
        'laid under the roof plan to draw over it; not an evidence photo',
      ].map(safeCell),
    ),
  }
}
