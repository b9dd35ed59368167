import type { GeoPoint } from '../../app/job/places.ts'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import { positionText, readPosition } from './position-text.ts'
import { sectionFields } from './section-fields.ts'
import { SectionFrame } from './section-frame.tsx'
import styles from './sheet.module.css'
import { TypedField } from './typed-field.tsx'
import { useSection } from './use-section.ts'
import { ZoneFields } from './zone-fields.tsx'

const zones = Intl.supportedValuesOf('timeZone').map((zone) => ({ key: zone, label: zone }))

/** The house: where it stands, which way it faces, how high it is. */
export function PropertySection() {
  const section = useSection('property')
  const field = sectionFields(section)
  const { value, set } = section
  return (
    <SectionFrame title="Property" section={section}>
      <div className={styles['whole']}>
        <TextField label="Address" {...field.text('address')} />
      </div>
      <div className={styles['two']}>
        <TextField label="City" {...field.text('city')} />
      </div>
      <div className={styles['two']}>
        <TextField label="State or region" {...field.text('region')} />
      </div>
      <div className={styles['two']}>
        <TextField label="Postal code" {...field.text('postalCode')} />
      </div>
      <div className={styles['three']}>
        <TypedField<GeoPoint | null>
          label="Position, latitude and longitude"
          name="property.position"
          placeholder="27.33640, -82.53070"
          value={value.position}
          write={positionText}
          read={readPosition}
          onChange={(position) => set({ ...value, position })}
        />
      </div>
      <div className={styles['three']} data-field="property.timeZone">
        <SelectField
          label="Time zone"
          options={zones}
          value={value.timeZone === '' ? null : value.timeZone}
          emptyLabel="By the house's position"
          placeholder="By the house's position"
          onChange={(zone) => set({ ...value, timeZone: zone ?? '' })}
        />
      </div>
      <div className={styles['two']}>
        <NumberField
          label="Front faces"
          unit="°"
          help="Clockwise from true north: 90 is east, 180 is south."
          {...field.number('frontAzimuthDeg')}
        />
      </div>
      <div className={styles['two']}>
        <NumberField label="Storeys" {...field.number('storeys')} />
      </div>
      <div className={styles['two']}>
        <NumberField label="Mean roof height" unit="ft" {...field.number('meanRoofHeightFt')} />
      </div>
      <ZoneFields section={section} />
    </SectionFrame>
  )
}
