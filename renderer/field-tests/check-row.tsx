import { handCheckFault, type HandCheck } from '../../app/fieldtest/survey.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { KeptText } from './kept-text.tsx'
import { LinePhotos } from './line-photos.tsx'
import { AreaField, FacetField } from './place-fields.tsx'
import { WholeNumber } from './whole-number.tsx'

interface CheckRowProps {
  readonly check: HandCheck
  readonly line: number
  readonly onChange: (check: HandCheck) => void
  readonly onRemove: () => void
}

/** One line of hand checks, edited in place. Counts that don't fit together are not saved. */
export function CheckRow({ check, line, onChange, onRemove }: CheckRowProps) {
  const named = (what: string) => ({ label: `${what}, line ${line}`, hideLabel: true }) as const
  const set = (changed: Partial<HandCheck>) => onChange({ ...check, ...changed })
  const faultWith = (key: 'checked' | 'loose' | 'tested') => (value: number) =>
    handCheckFault({ ...check, [key]: value })
  const counts = [
    ['Checked', 'checked'],
    ['Loose', 'loose'],
    ['Pulled', 'tested'],
  ] as const
  return (
    <tr>
      <td>
        <FacetField {...named('Facet')} value={check.facetId} onChange={(facetId) => set({ facetId })} />
      </td>
      <td>
        <AreaField {...named('Area')} value={check.area} onChange={(area) => set({ area })} />
      </td>
      {counts.map(([title, key]) => (
        <td key={key}>
          <WholeNumber
            {...named(title)}
            value={check[key]}
            faultOf={faultWith(key)}
            onChange={(value) => set({ [key]: value })}
          />
        </td>
      ))}
      <td>
        <KeptText {...named('By')} value={check.by} onChange={(by) => set({ by })} />
      </td>
      <td>
        <LinePhotos {...named('Photos')} value={check.photoIds} onChange={(photoIds) => set({ photoIds })} />
      </td>
      <td>
        <KeptText {...named('Note')} value={check.note} onChange={(note) => set({ note })} />
      </td>
      <td>
        <IconButton icon="close" label={`Remove line ${line}`} onPress={onRemove} />
      </td>
    </tr>
  )
}
