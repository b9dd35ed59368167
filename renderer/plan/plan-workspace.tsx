import { useMemo, useState } from 'react'
import type { Pin } from '../../app/evidence/finding.ts'
import { blankDraft } from '../findings/finding-draft.ts'
import { FindingDialog } from '../findings/finding-dialog.tsx'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { CamerasNote } from './cameras-note.tsx'
import { DrawMode } from './draw-mode.tsx'
import { DoorMode } from './door/door-mode.tsx'
import { facetUnderPin } from './facet-at.ts'
import { FacetsTable } from './facets-table.tsx'
import { LookMode } from './look-mode.tsx'
import { largestOutline } from './outlines/outline-draft.ts'
import { OutlineMode } from './outlines/outline-mode.tsx'
import { OutlineShapeMode } from './outlines/outline-shape-mode.tsx'
import { NameMode } from './name-mode.tsx'
import { PinMode } from './pin-mode.tsx'
import { LOOK, type PlanMode } from './plan-mode.ts'
import { PlanToolbar } from './plan-toolbar.tsx'
import styles from './plan-workspace.module.css'
import { QuantitiesButton } from './quantities/quantities-button.tsx'
import { ShapeMode } from './shape-mode.tsx'
import { SheetSettings } from './sheet-settings.tsx'
import { ImageMode } from './underlay/image-mode.tsx'
import { type CamerasShown, usePlanScene } from './use-plan-scene.ts'
import { usePlannedTests } from './tested/planned-tests.ts'
import { useZonedScene } from './zones/use-zoned-scene.ts'
import { ZonePanel } from './zones/zone-panel.tsx'

/** The roof plan: facets are drawn and changed here, findings are pinned, and everything on it can be selected. */
export function PlanWorkspace() {
  const { facets } = useJob()
  const [mode, setMode] = useState<PlanMode>(LOOK)
  const layers = useLayers()
  const { showsCameras, showsZones } = layers
  const [isCorrected, setCorrected] = useState(true)
  const [showsSheet, setShowsSheet] = useState(false)
  const [newPin, setNewPin] = useState<Pin | null>(null)
  const looking = mode.kind === 'look'
  const starts = useModeStarts(setMode)
  const camerasShown = showsCameras ? (isCorrected ? 'corrected' : 'as-written') : 'none'
  usePlanKeys({
    ...starts,
    isLooking: looking,
    cameras: () => layers.onCameras(!showsCameras),
    zones: () => layers.onZones(!showsZones),
    tests: () => layers.onTests(!layers.showsTests),
  })
  return (
    <div className={styles['workspace']}>
      <PlanToolbar
        mode={mode.kind}
        canShape={starts.canShape}
        hasOutline={starts.hasOutline}
        onOutline={starts.outline}
        onShapeOutline={starts.shapeOutline}
        {...layers}
        onDraw={starts.draw}
        onShape={starts.shape}
        onPin={starts.pin}
        onImage={starts.image}
        onDoor={starts.door}
        onSheet={() => setShowsSheet(true)}
      />
      {showsCameras ? <CamerasNote isCorrected={isCorrected} onCorrected={setCorrected} /> : null}
      <div className={styles['canvas']}>
        <ModeOnStage cameras={camerasShown} layers={layers} mode={mode} onMode={setMode} onNewFinding={setNewPin} />
        {looking && facets.length === 0 ? <Teaching onOutline={starts.outline} onDraw={starts.draw} /> : null}
      </div>
      {showsZones && looking ? <ZonePanel /> : null}
      {facets.length === 0 || !looking ? null : (
        <FacetsFoot onOpen={(facetId) => setMode({ kind: 'shape', facetId })} />
      )}
      <SheetSettings isOpen={showsSheet} onClose={() => setShowsSheet(false)} />
      <NewFinding
        pin={newPin}
        onClose={() => {
          setNewPin(null)
          setMode(LOOK)
        }}
      />
    </div>
  )
}

/** What of the plan is in sight beside the roof itself. */
function useLayers() {
  const [showsCameras, onCameras] = useState(false)
  const [showsZones, onZones] = useState(false)
  const [showsLengths, onLengths] = useState(true)
  const [showsTests, onTests] = useState(false)
  return { showsCameras, onCameras, showsZones, onZones, showsLengths, onLengths, showsTests, onTests }
}

/** The form of a finding whose pin was just put down; nothing while there is none. */
function NewFinding({ pin, onClose }: { readonly pin: Pin | null; readonly onClose: () => void }) {
  const { facets } = useJob()
  if (pin === null) return null
  return (
    <FindingDialog
      start={{ ...blankDraft(), pin, facetId: facetUnderPin(facets, pin)?.id ?? null }}
      onClose={onClose}
    />
  )
}

/** What can be begun on the plan, and whether there is something to do it with. */
interface ModeStarts {
  readonly canShape: boolean
  readonly hasOutline: boolean
  outline(): void
  shapeOutline(): void
  draw(): void
  shape(): void
  pin(): void
  image(): void
  door(): void
}

function useModeStarts(setMode: (mode: PlanMode) => void): ModeStarts {
  const { facets, outlines, planImages } = useJob()
  const { selection } = useSelection()
  const facet = facets.find((one) => selection.kind === 'facet' && one.id === selection.id)
  const house = outlines.find(({ id }) => id === facet?.from?.outlineId) ?? largestOutline(outlines)
  return {
    canShape: facet !== undefined,
    hasOutline: house !== undefined,
    outline: () => setMode({ kind: 'outline', courtyardOf: null }),
    shapeOutline: () => {
      if (house !== undefined) setMode({ kind: 'shape-outline', outlineId: house.id })
    },
    draw: () => setMode({ kind: 'draw', path: [] }),
    shape: () => {
      if (facet !== undefined) setMode({ kind: 'shape', facetId: facet.id })
    },
    pin: () => setMode({ kind: 'pin', findingId: selection.kind === 'finding' ? selection.id : null }),
    image: () => setMode({ kind: 'image', imageId: planImages.find(({ isShown }) => isShown)?.id ?? null }),
    door: () => setMode({ kind: 'door' }),
  }
}

interface PlanKeys extends ModeStarts {
  readonly isLooking: boolean
  cameras(): void
  zones(): void
  tests(): void
}

function usePlanKeys({ isLooking: enabled, canShape, hasOutline, ...perform }: PlanKeys): void {
  const { outline, shapeOutline, draw, shape, pin, image, door, cameras, zones, tests } = perform
  useCommands([
    { id: 'plan.outline', label: 'Draw an outline', keys: 'O', enabled, perform: outline },
    {
      id: 'plan.shape-outline',
      label: 'Shape the outline',
      keys: 'H',
      enabled: enabled && hasOutline,
      perform: shapeOutline,
    },
    { id: 'plan.draw', label: 'Draw a facet', keys: 'D', enabled, perform: draw },
    {
      id: 'plan.corners',
      label: 'Edit the corners of the selected facet',
      keys: 'E',
      enabled: enabled && canShape,
      perform: shape,
    },
    { id: 'plan.pin', label: 'Place a pin', keys: 'P', enabled, perform: pin },
    { id: 'plan.image', label: 'Lay an image under the plan', keys: 'I', enabled, perform: image },
    { id: 'plan.door', label: 'Mark the front door', keys: 'F', enabled, perform: door },
    { id: 'plan.cameras', label: 'Show or hide the cameras', keys: 'C', enabled, perform: cameras },
    { id: 'plan.zones', label: 'Show or hide the edge zones', keys: 'W', enabled, perform: zones },
    { id: 'plan.tests', label: 'Show or hide the field tests', keys: 'T', enabled, perform: tests },
  ])
}

interface ModeOnStageProps {
  readonly cameras: CamerasShown
  readonly layers: ReturnType<typeof useLayers>
  readonly mode: PlanMode
  readonly onMode: (mode: PlanMode) => void
  readonly onNewFinding: (pin: Pin) => void
}

function ModeOnStage({ cameras, layers, mode, onMode, onNewFinding }: ModeOnStageProps) {
  const { facets, findings, outlines } = useJob()
  const roof = useZonedScene(usePlanScene(cameras, layers.showsLengths), layers.showsZones)
  const tests = usePlannedTests()
  const scene = useMemo(
    () => ({ ...roof, tests: layers.showsTests ? tests : undefined }),
    [roof, layers.showsTests, tests],
  )
  useCommands([
    {
      id: 'plan.fit',
      label: 'Show the whole roof',
      keys: '0',
      enabled: mode.kind === 'look',
      perform: scene.stage.fit,
    },
  ])
  switch (mode.kind) {
    case 'look':
      return <LookMode scene={scene} onMode={onMode} />
    case 'draw':
      return <DrawMode scene={scene} path={mode.path} onMode={onMode} />
    case 'name':
      return <NameMode scene={scene} outline={mode.outline} onMode={onMode} />
    case 'shape': {
      const facet = facets.find((one) => one.id === mode.facetId)
      return facet === undefined ? (
        <LookMode scene={scene} onMode={onMode} />
      ) : (
        <ShapeMode key={facet.id} scene={scene} facet={facet} onMode={onMode} />
      )
    }
    case 'outline':
      return <OutlineMode key={mode.courtyardOf} scene={scene} courtyardOf={mode.courtyardOf} onMode={onMode} />
    case 'shape-outline': {
      const outline = outlines.find((one) => one.id === mode.outlineId)
      return outline === undefined ? (
        <LookMode scene={scene} onMode={onMode} />
      ) : (
        <OutlineShapeMode key={outline.id} scene={scene} outline={outline} onMode={onMode} />
      )
    }
    case 'image':
      return <ImageMode scene={scene} imageId={mode.imageId} onMode={onMode} />
    case 'door':
      return <DoorMode scene={scene} onMode={onMode} />
    case 'pin': {
      const finding = findings.find((one) => one.id === mode.findingId) ?? null
      return (
        <PinMode key={mode.findingId} scene={scene} finding={finding} onMode={onMode} onNewFinding={onNewFinding} />
      )
    }
  }
}

function Teaching({ onOutline, onDraw }: { onOutline: () => void; onDraw: () => void }) {
  return (
    <div className={styles['teaching']}>
      <EmptyState
        title="No facet is drawn yet"
        sentence="Draw the eaves line round the house: click its corners, or type its sides, such as 24' 6&quot;. The roof over it follows from its pitch."
      >
        <Button look="main" onPress={onOutline}>
          Draw the outline
        </Button>
        <Button onPress={onDraw}>Draw single facets</Button>
      </EmptyState>
    </div>
  )
}

function FacetsFoot({ onOpen }: { onOpen: (facetId: Extract<PlanMode, { kind: 'shape' }>['facetId']) => void }) {
  const [isOpen, setOpen] = useState(true)
  return (
    <section className={styles['foot']} aria-label="Facets and sums">
      <div className={styles['footHead']}>
        <IconButton
          icon={isOpen ? 'down' : 'up'}
          label={isOpen ? 'Fold the table of facets' : 'Show the table of facets'}
          aria-expanded={isOpen}
          onPress={() => setOpen(!isOpen)}
        />
        <h2>Facets</h2>
        <QuantitiesButton />
      </div>
      {isOpen ? (
        <div className={styles['table']}>
          <FacetsTable onOpen={(facet) => onOpen(facet.id)} />
        </div>
      ) : null}
    </section>
  )
}
