import type { CoveringClass, JobSheet } from '../../app/job/sheet.ts'
import { usualWasteWords } from '../../app/roof/quantities.ts'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import { sectionFields } from './section-fields.ts'
import { SectionFrame } from './section-frame.tsx'
import styles from './sheet.module.css'
import { type Section, useSection } from './use-section.ts'

const classes: readonly { readonly key: CoveringClass; readonly label: string }[] = [
  { key: 'not-stated', label: 'Not stated' },
  { key: 'concrete-tile', label: 'Concrete tile' },
  { key: 'clay-tile', label: 'Clay tile' },
  { key: 'asphalt-shingle', label: 'Asphalt shingle' },
  { key: 'metal-panel', label: 'Metal panel' },
  { key: 'other', label: 'Another covering' },
]

/** What lies on the roof, how it is laid and how old it is. */
export function CoveringSection() {
  const section = useSection('covering')
  const field = sectionFields(section)
  const { value, set } = section
  return (
    <SectionFrame title="Roof covering" section={section}>
      <div className={styles['two']} data-field="covering.class">
        <SelectField
          label="Class"
          options={classes}
          value={value.class}
          onChange={(chosen) => {
            if (chosen !== null) set({ ...value, class: chosen })
          }}
        />
      </div>
      <div className={styles['two']}>
        <TextField label="Profile" help="Its shape: flat, low wave, high barrel." {...field.text('profile')} />
      </div>
      <div className={styles['two']}>
        <TextField label="Colour" {...field.text('colour')} />
      </div>
      <div className={styles['two']}>
        <NumberField
          label="Exposure"
          unit="in"
          help="Length left bare, up the slope."
          {...field.number('exposureIn')}
        />
      </div>
      <div className={styles['two']}>
        <NumberField label="Cover width" unit="in" help="Width one piece covers." {...field.number('coverWidthIn')} />
      </div>
      <div className={styles['two']}>
        <NumberField label="Headlap" unit="in" {...field.number('headlapIn')} />
      </div>
      <div className={styles['two']}>
        <NumberField label="Year laid" {...field.number('installedYear')} />
      </div>
      <WasteField section={section} />
      <div className={styles['whole']}>
        <TextField label="Fastening" {...field.text('fastening')} />
      </div>
      <div className={styles['three']}>
        <TextField label="Underlayment" {...field.text('underlayment')} />
      </div>
      <div className={styles['three']}>
        <TextField label="Deck" {...field.text('deck')} />
      </div>
      <div className={styles['whole']}>
        <TextArea
          label="Matching stock"
          rows={2}
          help="What is known of matching pieces, and who searched for them."
          {...field.text('stockNote')}
        />
      </div>
    </SectionFrame>
  )
}

/** The allowance for waste that a person chooses; the ranges are an offer, no more. */
function WasteField({ section }: { section: Section<JobSheet['covering']> }) {
  const field = sectionFields(section)
  return (
    <div className={styles['four']}>
      <NumberField label="Waste allowance" unit="%" {...field.number('wastePercent')} help={usualWasteWords} />
    </div>
  )
}
