import { useState } from 'react'
import { useCommands } from '../../state/commands.ts'
import { Button } from '../../ui/button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { QuantitiesDialog } from './quantities-dialog.tsx'

/** Opens the roof's figures. */
export function QuantitiesButton() {
  const [isOpen, setOpen] = useState(false)
  useCommands([
    { id: 'plan.quantities', label: 'Show the quantities', keys: 'Q', enabled: !isOpen, perform: () => setOpen(true) },
  ])
  return (
    <>
      <Button look="quiet" onPress={() => setOpen(true)}>
        Quantities… <KeyHint keys="Q" />
      </Button>
      <QuantitiesDialog isOpen={isOpen} onClose={() => setOpen(false)} />
    </>
  )
}
