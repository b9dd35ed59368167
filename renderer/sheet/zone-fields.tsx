import type { JobSheet } from '../../app/job/sheet.ts'
import { windEditionSchema } from '../../app/roof/zones/edition.ts'
import { editionWords } from '../../app/roof/zones/zone-words.ts'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { sectionFields } from './section-fields.ts'
import styles from './sheet.module.css'
import type { Section } from './use-section.ts'

const editions = windEditionSchema.options.map((edition) => ({ key: edition, label: editionWords(edition) }))

/** What the edge zones on the plan are drawn from, beside the roof height. */
export function ZoneFields({ section }: { section: Section<JobSheet['property']> }) {
  const field = sectionFields(section)
  const { value, set } = section
  return (
    <>
      <div className={styles['three']} data-field="property.windEdition">
        <SelectField
          label="Wind standard, edition"
          options={editions}
          value={value.windEdition}
          emptyLabel="Not stated"
          placeholder="Not stated"
          help="Names the edition that the edge zones on the plan go by. They are context, not engineering."
          onChange={(windEdition) => set({ ...value, windEdition })}
        />
      </div>
      <div className={styles['three']}>
        <NumberField
          label="Least width between walls"
          unit="ft"
          help="For the edge zones. Empty: taken from the plan, overhangs in it."
          {...field.number('leastWidthFt')}
        />
      </div>
    </>
  )
}
