import { useMemo, useState } from 'react'
import { useCommands } from '../state/commands.ts'
import { frameKeys } from './frame-keys.ts'

/** Whether the details at the right are folded away. */
export interface DetailsFold {
  readonly isFolded: boolean
  turn(): void
}

/** The fold of the details, with its key. */
export function useDetailsFold(): DetailsFold {
  const [isFolded, setFolded] = useState(false)
  const fold = useMemo(() => ({ isFolded, turn: () => setFolded((before) => !before) }), [isFolded])
  useCommands([{ ...frameKeys.details, enabled: true, perform: fold.turn }], 'frame')
  return fold
}
