import { useMemo } from 'react'
import { useCommands } from '../state/commands.ts'
import { useStoredFlag } from '../ui/use-stored-flag.ts'
import { frameKeys } from './frame-keys.ts'

/** Whether the details at the right are folded away. */
export interface DetailsFold {
  readonly isFolded: boolean
  turn(): void
}

/** The fold of the details, with its key. */
export function useDetailsFold(): DetailsFold {
  const [isFolded, setFolded] = useStoredFlag('battenbook-details-folded')
  const fold = useMemo(() => ({ isFolded, turn: () => setFolded(!isFolded) }), [isFolded, setFolded])
  useCommands([{ ...frameKeys.details, enabled: true, perform: fold.turn }], 'frame')
  return fold
}
