import { useMemo, useState } from 'react'
import { components } from '../../app/evidence/catalog/components.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { KeyHint } from '../ui/key-hint.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { CaptionField } from './caption-field.tsx'
import { LeaveOutDialog } from './leave-out-dialog.tsx'
import { type Shared, sharedTags } from './shared-tags.ts'
import styles from './tag-bar.module.css'
import { tagChoices, type TagStep, tagSteps } from './tag-keys.ts'
import { TagPalette } from './tag-palette.tsx'
import { useTagging } from './use-tagging.ts'
import { useTagSteps } from './use-tag-steps.ts'

interface TagBarProps {
  /** Goes to the next photo, after "same as last and next". */
  readonly onNext: () => void
  readonly onNewFinding: () => void
}

/** Says where the selected photos were taken and what they show, by key or click, all of them at once. */
export function TagBar({ onNext, onNewFinding }: TagBarProps) {
  const { facets, job } = useJob()
  const tagging = useTagging()
  const { photos } = tagging
  const [leavingOut, setLeavingOut] = useState(false)
  const isEnabled = photos.length > 0
  const covering = job.sheet.covering.class
  const choicesOf = (step: TagStep) => tagChoices(step, { facets, covering })
  const steps = useTagSteps({ isEnabled, choicesOf, onChosen: (patch) => void tagging.tag(patch) })
  const words = useTagWords(photos)
  const isLeftOut = photos.some(({ tags }) => tags.leftOutBecause !== null)
  const leaveOut = () => {
    if (isLeftOut) void tagging.tag({ leftOutBecause: null })
    else setLeavingOut(true)
  }
  const canRepeat = isEnabled && tagging.hasLast && steps.open === null
  const repeatAndGoOn = () => void tagging.tagAsLast().then(onNext)
  const free = isEnabled && steps.open === null
  useCommands([
    {
      id: 'photo-tags.same',
      label: 'Same tags as last',
      keys: 'S',
      enabled: canRepeat,
      perform: () => void tagging.tagAsLast(),
    },
    {
      id: 'photo-tags.same-next',
      label: 'Same tags as last, then the next photo',
      keys: 'Shift+S',
      enabled: canRepeat,
      perform: repeatAndGoOn,
    },
    {
      id: 'photo-tags.leave-out',
      label: 'Leave out of the packet, or put back in',
      keys: 'X',
      enabled: free,
      perform: leaveOut,
    },
    {
      id: 'photo-tags.finding',
      label: 'New finding from the selected photos',
      keys: 'N',
      enabled: free,
      perform: onNewFinding,
    },
  ])
  return (
    <section className={styles['bar']} aria-label="Tags of the selected photos">
      {steps.open === null ? null : (
        <TagPalette
          open={steps.open}
          choices={choicesOf(steps.open.step)}
          onChoose={(patch) => {
            steps.leave()
            void tagging.tag(patch)
          }}
          onLeave={steps.leave}
        />
      )}
      <div className={styles['line']}>
        <span className={styles['count']}>
          {isEnabled ? countWords(photos.length, 'photo') : 'Select photos to tag them'}
        </span>
        {tagSteps.map(({ step, key, label }) => (
          <button
            key={step}
            type="button"
            className={classNames(styles['step'], steps.open?.step === step && styles['stepOpen'])}
            disabled={!isEnabled}
            aria-expanded={steps.open?.step === step}
            onClick={() => (steps.open?.step === step ? steps.leave() : steps.enter(step))}
          >
            <span className={styles['stepHead']}>
              {label} <KeyHint keys={key} />
            </span>
            <span className={styles['stepValue']}>{isEnabled ? words[step] : ' '}</span>
          </button>
        ))}
        <CaptionField photos={photos} onSave={(caption) => void tagging.tag({ caption })} />
      </div>
      <div className={styles['line']}>
        <Button look="quiet" isDisabled={!canRepeat} onPress={() => void tagging.tagAsLast()}>
          Same as last <KeyHint keys="S" />
        </Button>
        <Button look="quiet" isDisabled={!canRepeat} onPress={repeatAndGoOn}>
          Same, then next <KeyHint keys="Shift+S" />
        </Button>
        <Button look="quiet" isDisabled={!isEnabled} onPress={leaveOut}>
          {isLeftOut ? 'Put back in the packet' : 'Leave out of the packet'} <KeyHint keys="X" />
        </Button>
        <Button look="quiet" isDisabled={!isEnabled} onPress={onNewFinding}>
          New finding from these <KeyHint keys="N" />
        </Button>
      </div>
      <LeaveOutDialog
        isOpen={leavingOut}
        count={photos.length}
        onClose={() => setLeavingOut(false)}
        onLeaveOut={(leftOutBecause) => {
          setLeavingOut(false)
          void tagging.tag({ leftOutBecause })
        }}
      />
    </section>
  )
}

/** What the selected photos say of each step, in words. */
function useTagWords(photos: ReturnType<typeof useTagging>['photos']): Record<TagStep, string> {
  const { facets } = useJob()
  return useMemo(() => {
    const tags = sharedTags(photos)
    return {
      facet: inWords(tags.facetId, (id) => facets.find((facet) => facet.id === id)?.letter ?? 'a facet that is gone'),
      component: inWords(tags.component, (key) => components[key].label),
      condition: inWords(tags.condition, (key) => conditions[key].label),
      role: inWords(tags.role, (key) => photoRoleLabels[key]),
    }
  }, [photos, facets])
}

function inWords<T>(tag: Shared<T | null>, words: (value: T) => string): string {
  if (tag.kind === 'mixed') return 'differ'
  return tag.value === null ? 'not tagged' : words(tag.value)
}
