import { useMemo } from 'react'
import type { PlanImageId } from '../../../app/job/ids.ts'
import type { PlanImage } from '../../../app/roof/plan-image.ts'
import { useCommands } from '../../state/commands.ts'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { PlanCanvas, type PlanScene } from '../plan-canvas.tsx'
import panels from '../plan-panels.module.css'
import { LOOK, type PlanMode } from '../plan-mode.ts'
import { AddImage } from './add-image.tsx'
import { ImageFields } from './image-fields.tsx'
import { ImageChoice } from './image-choice.tsx'
import { useLayingTool } from './laying-tool.tsx'
import { ScaleSteps } from './scale-steps.tsx'
import { type Laying, useLaying } from './use-laying.ts'

interface ImageModeProps {
  readonly scene: PlanScene
  /** The image that is laid; null while one is added. */
  readonly imageId: PlanImageId | null
  readonly onMode: (mode: PlanMode) => void
}

/** Laying images under the plan, to draw over them. */
export function ImageMode({ scene, imageId, onMode }: ImageModeProps) {
  const { planImages } = useJob()
  const image = planImages.find(({ id }) => id === imageId)
  return image === undefined ? (
    <AddMode scene={scene} onMode={onMode} />
  ) : (
    <LayMode key={image.id} scene={scene} image={image} onMode={onMode} />
  )
}

function AddMode({ scene, onMode }: Pick<ImageModeProps, 'scene' | 'onMode'>) {
  const done = () => onMode(LOOK)
  useCommands([{ id: 'plan-image.done', label: 'Leave the image', keys: 'Escape', enabled: true, perform: done }])
  return (
    <PlanCanvas scene={scene} tool={{ cursor: 'default', cross: null }}>
      <section className={panels['tool']} aria-label="Image under the plan">
        <p className={panels['lead']}>Lay an image under the plan, and draw the roof over it.</p>
        <p className={panels['quiet']}>
          Only a view from straight above can be laid. One taken at a slant has no single scale: lengths measured on it
          are wrong. A JPEG, PNG, TIFF or WebP is kept with the job as a supporting picture, never among the photos.
        </p>
        <ImageChoice chosen={null} onChoose={(id) => onMode({ kind: 'image', imageId: id })} />
        <AddImage onAdded={(id) => onMode({ kind: 'image', imageId: id })} />
        <div className={panels['line']}>
          <Button look="quiet" onPress={done}>
            Done <KeyHint keys="Escape" />
          </Button>
        </div>
      </section>
    </PlanCanvas>
  )
}

interface LayModeProps extends Pick<ImageModeProps, 'scene' | 'onMode'> {
  readonly image: PlanImage
}

function LayMode({ scene, image, onMode }: LayModeProps) {
  const { facets, job } = useJob()
  const laying = useLaying(image)
  const corners = useMemo(() => facets.flatMap((facet) => facet.outline), [facets])
  const tool = useLayingTool({ laying, upAzimuthDeg: job.frame.upAzimuthDeg, corners })
  const leave = () => (laying.act === 'none' ? onMode(LOOK) : laying.begin('none'))
  useCommands([
    {
      id: 'plan-image.leave',
      label: 'Leave the image, or stop marking',
      keys: 'Escape',
      enabled: true,
      perform: leave,
    },
  ])
  return (
    <PlanCanvas scene={scene} tool={tool}>
      <section className={panels['tool']} aria-label="Image under the plan">
        <p className={panels['lead']}>{leadWords(laying)}</p>
        {laying.act === 'none' ? (
          <>
            <ImageChoice chosen={image} onChoose={(id) => onMode({ kind: 'image', imageId: id })} />
            <ImageFields key={image.id} laying={laying} />
          </>
        ) : null}
        <ScaleSteps laying={laying} />
        <div className={panels['line']}>
          {laying.act === 'none' ? (
            <Button onPress={() => onMode({ kind: 'image', imageId: null })}>Add another image…</Button>
          ) : null}
          <Button look="quiet" onPress={leave}>
            {laying.act === 'none' ? 'Done' : 'Stop marking'} <KeyHint keys="Escape" />
          </Button>
        </div>
      </section>
    </PlanCanvas>
  )
}

function leadWords({ act, marks, image }: Laying): string {
  const count = marks.length
  switch (act) {
    case 'scale':
    case 'check':
      if (count === 0) return 'Click one end of a level line whose length is known: an eave, a ridge, a drive.'
      return count === 1 ? 'Click its other end.' : 'Type the length of the marked line.'
    case 'fit':
      return count === 0
        ? 'Click a place on the image, such as a corner of the roof.'
        : 'Click where that place is on the plan; it holds on to corners of the drawn roof.'
    case 'none':
      return image.knownLine === null
        ? 'The image is not to scale yet: give one length on it.'
        : 'Move and turn the image until it lies under the plan.'
  }
}
