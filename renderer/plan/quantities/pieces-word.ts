import { piecesWord } from '../../../app/roof/quantities.ts'
import { useJob } from '../../state/job-state.tsx'

/** "Tiles" on a tile roof, "Pieces" on others. */
export function usePiecesWord(): string {
  return piecesWord(useJob().job.sheet.covering.class)
}
