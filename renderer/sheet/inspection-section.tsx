import type { JobSheet } from '../../app/job/sheet.ts'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import { HeightCaution } from './height-caution.tsx'
import { sectionFields } from './section-fields.ts'
import { SectionFrame } from './section-frame.tsx'
import styles from './sheet.module.css'
import { type Section, useSection } from './use-section.ts'

type Inspection = JobSheet['inspection']

const methods: readonly { readonly key: Inspection['method'][number]; readonly label: string }[] = [
  { key: 'walked', label: 'Walked' },
  { key: 'from-ladder', label: 'From a ladder' },
  { key: 'from-ground', label: 'From the ground' },
  { key: 'by-drone', label: 'By drone' },
]

/** When, how and by whom the roof was looked at. */
export function InspectionSection() {
  const section = useSection('inspection')
  const field = sectionFields(section)
  return (
    <SectionFrame title="Inspection" section={section}>
      <HeightCaution />
      <InspectionDays section={section} />
      <InspectionMethods section={section} />
      <div className={styles['three']}>
        <TextField label="Inspector" {...field.text('inspector')} />
      </div>
      <div className={styles['three']}>
        <TextField label="Inspector's licence" {...field.text('inspectorLicence')} />
      </div>
      <div className={styles['whole']}>
        <TextArea label="Weather at the inspection" rows={2} {...field.text('weather')} />
      </div>
      <div className={styles['whole']}>
        <TextArea
          label="Marks found on arrival"
          rows={2}
          help="Chalk, tarps or paint left by others, so that nobody takes them for the inspector's."
          {...field.text('marksOnArrival')}
        />
      </div>
      <div className={styles['whole']}>
        <TextArea
          label="Opinion of the roof as a whole"
          rows={4}
          help="In the inspector's own words; the packet prints it as an opinion."
          {...field.text('overallOpinion')}
        />
      </div>
    </SectionFrame>
  )
}

function InspectionDays({ section }: { section: Section<Inspection> }) {
  const { value, set, errors } = section
  const change = (dates: Inspection['dates']) => set({ ...value, dates })
  return (
    <div className={styles['whole']} role="group" aria-label="Days of the inspection" data-field="inspection.dates">
      <span className={styles['groupLabel']}>Days of the inspection</span>
      <div className={styles['days']}>
        {value.dates.map((date, at) => (
          <div key={at} className={styles['day']}>
            <TextField
              label={`Day ${at + 1}`}
              hideLabel
              placeholder="2026-03-20"
              name={`inspection.dates.${at}`}
              value={date}
              error={errors.get(`inspection.dates.${at}`) ?? null}
              onChange={(text) => change(value.dates.with(at, text.trim()))}
            />
            <IconButton
              icon="trash"
              label={`Remove day ${at + 1}`}
              onPress={() => change(value.dates.toSpliced(at, 1))}
            />
          </div>
        ))}
        <Button onPress={() => change([...value.dates, ''])}>
          <Icon name="plus" />
          Add a day
        </Button>
      </div>
    </div>
  )
}

function InspectionMethods({ section }: { section: Section<Inspection> }) {
  const { value, set } = section
  return (
    <div
      className={styles['whole']}
      role="group"
      aria-label="How the roof was looked at"
      data-field="inspection.method"
    >
      <span className={styles['groupLabel']}>How the roof was looked at</span>
      <div className={styles['checks']}>
        {methods.map(({ key, label }) => (
          <Checkbox
            key={key}
            isSelected={value.method.includes(key)}
            onChange={(isSelected) =>
              set({
                ...value,
                method: isSelected ? [...value.method, key] : value.method.filter((method) => method !== key),
              })
            }
          >
            {label}
          </Checkbox>
        ))}
      </div>
    </div>
  )
}
