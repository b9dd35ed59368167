import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import { sectionFields } from './section-fields.ts'
import { SectionFrame } from './section-frame.tsx'
import styles from './sheet.module.css'
import { useSection } from './use-section.ts'

/** Who owns the house. */
export function OwnerSection() {
  const section = useSection('owner')
  const field = sectionFields(section)
  return (
    <SectionFrame title="Owner" section={section}>
      <div className={styles['two']}>
        <TextField label="Name" {...field.text('name')} />
      </div>
      <div className={styles['two']}>
        <TextField label="Phone" type="tel" {...field.text('phone')} />
      </div>
      <div className={styles['two']}>
        <TextField label="Email" {...field.text('email')} />
      </div>
    </SectionFrame>
  )
}

/** The numbers that an insurer files the loss under. */
export function InsuranceSection() {
  const section = useSection('insurance')
  const field = sectionFields(section)
  return (
    <SectionFrame title="Insurance" note="Numbers only, so that the packet finds its file." section={section}>
      <div className={styles['two']}>
        <TextField label="Insurer" {...field.text('insurer')} />
      </div>
      <div className={styles['two']}>
        <TextField label="Policy number" {...field.text('policyNumber')} />
      </div>
      <div className={styles['two']}>
        <TextField label="Claim number" {...field.text('claimNumber')} />
      </div>
    </SectionFrame>
  )
}

/** Who reports the roof's condition. */
export function ContractorSection() {
  const section = useSection('contractor')
  const field = sectionFields(section)
  return (
    <SectionFrame title="Contractor" note="Stands on the cover and in the statement." section={section}>
      <div className={styles['three']}>
        <TextField label="Name" {...field.text('name')} />
      </div>
      <div className={styles['three']}>
        <TextField label="Licence" {...field.text('licence')} />
      </div>
      <div className={styles['whole']}>
        <TextField label="Address" {...field.text('address')} />
      </div>
      <div className={styles['three']}>
        <TextField label="Phone" type="tel" {...field.text('phone')} />
      </div>
      <div className={styles['three']}>
        <TextField label="Email" {...field.text('email')} />
      </div>
    </SectionFrame>
  )
}

const emptyContact = { role: '', name: '', phone: '', email: '' }
const contactLabels = { role: 'Part in the job', name: 'Name', phone: 'Phone', email: 'Email' } as const
const contactNames = ['role', 'name', 'phone', 'email'] as const

/** Everybody else who has a part in the job. */
export function ContactsSection() {
  const section = useSection('contacts')
  const { value, set, errors } = section
  return (
    <SectionFrame title="Contacts" note="Adjusters, tenants, engineers, anyone to call." section={section}>
      <div className={styles['rows']}>
        {value.map((contact, at) => (
          <div
            key={at}
            className={`${styles['row']} ${styles['contact']}`}
            role="group"
            aria-label={`Contact ${at + 1}`}
          >
            {contactNames.map((name) => (
              <TextField
                key={name}
                label={contactLabels[name]}
                hideLabel={at > 0}
                name={`contacts.${at}.${name}`}
                value={contact[name]}
                error={errors.get(`contacts.${at}.${name}`) ?? null}
                onChange={(text) => set(value.with(at, { ...contact, [name]: text }))}
              />
            ))}
            <IconButton icon="trash" label={`Remove contact ${at + 1}`} onPress={() => set(value.toSpliced(at, 1))} />
          </div>
        ))}
        <Button onPress={() => set([...value, emptyContact])}>
          <Icon name="plus" />
          Add a contact
        </Button>
      </div>
    </SectionFrame>
  )
}

/** Anything else worth writing down. */
export function NotesSection() {
  const section = useSection('notes')
  return (
    <SectionFrame title="Notes" section={section}>
      <div className={styles['whole']}>
        <TextArea
          label="Notes"
          hideLabel
          rows={4}
          name="notes"
          value={section.value}
          onChange={section.set}
          error={section.errors.get('notes') ?? null}
        />
      </div>
    </SectionFrame>
  )
}
