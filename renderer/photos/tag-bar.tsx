import { useMemo, useState } from 'react'
import { components } from '../../app/evidence/catalog/components.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { useJob } from '../state/job-state.tsx'
import { classNames } from '../ui/class-names.ts'
import { KeyHint } from '../ui/key-hint.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { CaptionField } from './caption-field.tsx'
import { LeaveOutDialog } from './leave-out-dialog.tsx'
import { leftOutReasons } from './left-out-reasons.ts'
import { type Shared, sharedTags } from './shared-tags.ts'
import { TagActions } from './tag-actions.tsx'
import { SuggestionChips } from './suggestion-chips.tsx'
import styles from './tag-bar.module.css'
import { tagChoices, type TagStep, tagSteps } from './tag-keys.ts'
import { TagPalette } from './tag-palette.tsx'
import { type Tagging, useTagging } from './use-tagging.ts'
import { type TagSteps, useTagSteps } from './use-tag-steps.ts'

interface TagBarProps {
  /** Goes to the next photo, after "same as last and next". */
  readonly onNext: () => void
  readonly onNewFinding: () => void
}

/** Says where the selected photos were taken and what they show, by key or click, all of them at once. */
export function TagBar({ onNext, onNewFinding }: TagBarProps) {
  const { facets, job, photos: all } = useJob()
  const tagging = useTagging()
  const { photos } = tagging
  const [leavingOut, setLeavingOut] = useState(false)
  const covering = job.sheet.covering.class
  const choicesOf = (step: TagStep) => tagChoices(step, { facets, covering })
  const steps = useTagSteps({
    isEnabled: photos.length > 0,
    choicesOf,
    onChosen: (patch) => void tagging.tag(patch),
  })
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
      <SuggestionChips tagging={tagging} isFree={steps.open === null} />
      <div className={styles['line']}>
        <span className={styles['count']}>
          {photos.length > 0 ? countWords(photos.length, 'photo') : 'Select photos to tag them'}
        </span>
        <StepButtons photos={photos} steps={steps} />
        <CaptionField photos={photos} onSave={(caption) => void tagging.tag({ caption })} />
      </div>
      <TagActions
        tagging={tagging}
        isFree={photos.length > 0 && steps.open === null}
        onLeaveOut={() => setLeavingOut(true)}
        onNext={onNext}
        onNewFinding={onNewFinding}
      />
      <LeaveOutDialog
        isOpen={leavingOut}
        count={photos.length}
        reasons={leftOutReasons(all)}
        onClose={() => setLeavingOut(false)}
        onLeaveOut={(leftOutBecause) => {
          setLeavingOut(false)
          void tagging.tag({ leftOutBecause })
        }}
      />
    </section>
  )
}

function StepButtons({ photos, steps }: { photos: Tagging['photos']; steps: TagSteps }) {
  const words = useTagWords(photos)
  return tagSteps.map(({ step, key, label }) => {
    const isOpen = steps.open?.step === step
    return (
      <button
        key={step}
        type="button"
        className={classNames(styles['step'], isOpen && styles['stepOpen'])}
        disabled={photos.length === 0}
        aria-expanded={isOpen}
        onClick={() => (isOpen ? steps.leave() : steps.enter(step))}
      >
        <span className={styles['stepHead']}>
          {label} <KeyHint keys={key} />
        </span>
        <span className={styles['stepValue']}>{photos.length === 0 ? '' : words[step]}</span>
      </button>
    )
  })
}

/** What the selected photos say of each step, in words. */
function useTagWords(photos: Tagging['photos']): Record<TagStep, string> {
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
