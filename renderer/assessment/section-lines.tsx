import { type RoofSection, roofSectionSchema } from '../../app/assessment/assessment.ts'
import type { JudgedSection } from '../../app/assessment/roof-sections.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { newLineId } from '../field-tests/new-line-id.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Panel } from '../ui/panel.tsx'
import { DateField } from './date-field.tsx'
import styles from './stated.module.css'
import { useAssessment } from './use-assessment.ts'

/** The sections that the rule judges: as the plan has them until a person groups facets, with the permit of each. */
export function SectionLines({ sections }: { sections: readonly JudgedSection[] }) {
  const { assessment, save } = useAssessment()
  const own = assessment.sections
  return (
    <>
      <h3 className={styles['heading']}>Sections of the roof</h3>
      <p className={styles['quiet']}>
        Without your grouping, facets that meet without a step in height are one section. Group them yourself where a
        joint, a wall, a flashing or another covering divides the roof, or to enter a permit.
      </p>
      {sections
        .filter(({ by }) => by === 'plan')
        .map((section) => (
          <p key={section.id}>
            {section.name}, as the plan has it{' '}
            <Button
              look="quiet"
              onPress={() => {
                const { name, facetIds } = section
                void save({ sections: [...own, roofSectionSchema.parse({ id: newLineId(), name, facetIds })] })
              }}
            >
              Group as a section
            </Button>
          </p>
        ))}
      {own.map((section, at) => (
        <SectionLine
          key={section.id}
          line={at + 1}
          section={section}
          others={own.filter(({ id }) => id !== section.id)}
          onChange={(changed) => void save({ sections: own.map((one) => (one.id === changed.id ? changed : one)) })}
          onRemove={() => void save({ sections: own.filter(({ id }) => id !== section.id) })}
        />
      ))}
    </>
  )
}

interface SectionLineProps {
  readonly line: number
  readonly section: RoofSection
  readonly others: readonly RoofSection[]
  readonly onChange: (section: RoofSection) => void
  readonly onRemove: () => void
}

function SectionLine({ line, section, others, onChange, onRemove }: SectionLineProps) {
  const { facets } = useJob()
  const set = (changed: Partial<RoofSection>) => onChange({ ...section, ...changed })
  const own = facets.filter(({ id }) => section.facetIds.includes(id))
  return (
    <Panel title={`Section ${line}`} actions={<Button onPress={onRemove}>Undo grouping {line}</Button>}>
      <div className={styles['fields']}>
        <KeptText
          label="Name"
          value={section.name}
          faultOf={(text) => (text.trim() === '' ? 'A section needs a name.' : null)}
          onChange={(name) => set({ name })}
        />
        <div className={styles['wide']}>
          <KeptText
            label="Facets"
            value={own.map(({ letter }) => letter).join(', ')}
            placeholder="A, B"
            faultOf={(text) => lettersFault(text, facets, others)}
            onChange={(text) => {
              const letters = lettersIn(text)
              set({ facetIds: facets.filter(({ letter }) => letters.includes(letter)).map(({ id }) => id) })
            }}
          />
        </div>
        <DateField
          label="Day of its permit"
          value={section.permitDate}
          onChange={(permitDate) => set({ permitDate })}
        />
        <KeptText label="Permit" value={section.permit} onChange={(permit) => set({ permit })} />
      </div>
    </Panel>
  )
}

function lettersFault(text: string, facets: readonly Facet[], others: readonly RoofSection[]): string | null {
  const taken = new Set(others.flatMap(({ facetIds }) => facetIds))
  for (const letter of lettersIn(text)) {
    const facet = facets.find((one) => one.letter === letter)
    if (facet === undefined) return `There is no facet ${letter}.`
    if (taken.has(facet.id)) return `Facet ${letter} is in another section already.`
  }
  return null
}

function lettersIn(text: string): readonly string[] {
  return [...text.toUpperCase().matchAll(/[\p{L}\p{N}]+/gu)].map(([letter]) => letter)
}
