import { conditionChoices } from '../../app/evidence/catalog/choices.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { squareWorking, tallySquares } from '../../app/fieldtest/square-tally.ts'
import type { TestSquare } from '../../app/fieldtest/survey.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Panel } from '../ui/panel.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './field-tests.module.css'
import { KeptText } from './kept-text.tsx'
import { LinePhotos } from './line-photos.tsx'
import { newTestSquare } from './new-lines.ts'
import { FacetField } from './place-fields.tsx'
import { useSurvey } from './use-survey.ts'
import { WholeNumber } from './whole-number.tsx'

/** Squares of 10 ft by 10 ft with counts by condition, and their mean and range by facet. */
export function SquaresPane() {
  const { survey, save } = useSurvey()
  const { squares } = survey
  const { facets } = useJob()
  const letterOf = (facetId: TestSquare['facetId']) => facets.find(({ id }) => id === facetId)?.letter ?? 'no facet'
  const tallies = tallySquares(squares)
  return (
    <>
      {squares.length === 0 ? (
        <p className={styles['quiet']}>
          No test square yet. Mark out 10 ft by 10 ft on a slope, and count what is in it by condition. Counts hold for
          that facet only.
        </p>
      ) : null}
      {squares.map((square, i) => (
        <SquareLine
          key={square.id}
          square={square}
          line={i + 1}
          onChange={(changed) => void save({ squares: squares.map((one) => (one.id === changed.id ? changed : one)) })}
          onRemove={() => void save({ squares: squares.filter(({ id }) => id !== square.id) })}
        />
      ))}
      <p>
        <Button look="main" onPress={() => void save({ squares: [...squares, newTestSquare(squares.at(-1))] })}>
          Add a square
        </Button>
      </p>
      {tallies.length === 0 ? null : (
        <>
          <h2 className={styles['heading']}>By facet, per 100 sq ft</h2>
          <ul>
            {tallies.map((tally) => (
              <li key={`${letterOf(tally.facetId)} ${tally.condition}`}>
                {letterOf(tally.facetId)}, {conditions[tally.condition].label.toLowerCase()}: {squareWorking(tally)}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  )
}

interface SquareLineProps {
  readonly square: TestSquare
  readonly line: number
  readonly onChange: (square: TestSquare) => void
  readonly onRemove: () => void
}

function SquareLine({ square, line, onChange, onRemove }: SquareLineProps) {
  const { job } = useJob()
  const set = (changed: Partial<TestSquare>) => onChange({ ...square, ...changed })
  const unused = conditionChoices(job.sheet.covering.class).filter(
    ({ key }) => !square.counts.some(({ condition }) => condition === key),
  )
  return (
    <Panel title={`Square ${line}`} actions={<Button onPress={onRemove}>Remove square {line}</Button>}>
      <div className={styles['fields']}>
        <FacetField value={square.facetId} onChange={(facetId) => set({ facetId })} />
        {square.counts.map(({ condition, count }) => (
          <WholeNumber
            key={condition}
            label={conditions[condition].label}
            value={count}
            onChange={(next) =>
              set({ counts: square.counts.map((one) => (one.condition === condition ? { ...one, count: next } : one)) })
            }
          />
        ))}
        <SelectField
          label="Count another condition"
          options={unused}
          value={null}
          onChange={(key) => {
            if (key !== null) set({ counts: [...square.counts, { condition: key, count: 0 }] })
          }}
        />
        <LinePhotos value={square.photoIds} onChange={(photoIds) => set({ photoIds })} />
        <KeptText label="Note" value={square.note} onChange={(note) => set({ note })} />
      </div>
    </Panel>
  )
}
