import { type Stock, stockSchema, type StockSearch, stockSearchSchema } from '../../app/assessment/assessment.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { newLineId } from '../field-tests/new-line-id.ts'
import { Button } from '../ui/button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { Panel } from '../ui/panel.tsx'
import { DateField } from './date-field.tsx'
import { LineDocuments } from './line-documents.tsx'
import styles from './stated.module.css'
import { useAssessment } from './use-assessment.ts'

/** Matching tile that is known to exist, searches for it, and what is known of a profile that is no longer made. */
export function StockLines() {
  const { assessment, save } = useAssessment()
  const { stock, searches, profile } = assessment
  const putStock = (changed: Stock) => void save({ stock: stock.map((one) => (one.id === changed.id ? changed : one)) })
  const putSearch = (changed: StockSearch) =>
    void save({ searches: searches.map((one) => (one.id === changed.id ? changed : one)) })
  return (
    <>
      <h3 className={styles['heading']}>Matching tile known of</h3>
      {stock.map((one, at) => (
        <StockLine
          key={one.id}
          line={at + 1}
          stock={one}
          onChange={putStock}
          onRemove={() => void save({ stock: stock.filter(({ id }) => id !== one.id) })}
        />
      ))}
      <p>
        <Button onPress={() => void save({ stock: [...stock, stockSchema.parse({ id: newLineId() })] })}>
          Add matching tile
        </Button>
      </p>
      <h3 className={styles['heading']}>Searches for matching tile</h3>
      {searches.map((one, at) => (
        <SearchLine
          key={one.id}
          line={at + 1}
          search={one}
          onChange={putSearch}
          onRemove={() => void save({ searches: searches.filter(({ id }) => id !== one.id) })}
        />
      ))}
      <p>
        <Button onPress={() => void save({ searches: [...searches, stockSearchSchema.parse({ id: newLineId() })] })}>
          Add a search
        </Button>
      </p>
      <h3 className={styles['heading']}>A profile that is no longer made</h3>
      <div className={styles['fields']}>
        <div className={styles['wide']}>
          <KeptText
            label="What is known of it, and from whom"
            value={profile.statement}
            onChange={(statement) => void save({ profile: { ...profile, statement } })}
          />
        </div>
        <LineDocuments
          label="Documents that show it"
          value={profile.attachmentIds}
          onChange={(attachmentIds) => void save({ profile: { ...profile, attachmentIds } })}
        />
      </div>
    </>
  )
}

interface LineProps {
  readonly line: number
  readonly onRemove: () => void
}

function StockLine({
  line,
  stock,
  onChange,
  onRemove,
}: LineProps & { stock: Stock; onChange: (stock: Stock) => void }) {
  const set = (changed: Partial<Stock>) => onChange({ ...stock, ...changed })
  return (
    <Panel title={`Matching tile ${line}`} actions={<Button onPress={onRemove}>Remove matching tile {line}</Button>}>
      <div className={styles['fields']}>
        <NumberField label="Tiles" min={0} value={stock.pieces} onChange={(pieces) => set({ pieces })} />
        <KeptText label="Where" value={stock.where} onChange={(where) => set({ where })} />
        <KeptText label="Counted by" value={stock.by} onChange={(by) => set({ by })} />
        <DateField label="On" value={stock.on} onChange={(on) => set({ on })} />
        <div className={styles['wide']}>
          <KeptText label="Note" value={stock.note} onChange={(note) => set({ note })} />
        </div>
        <LineDocuments
          label="Documents"
          value={stock.attachmentIds}
          onChange={(attachmentIds) => set({ attachmentIds })}
        />
      </div>
    </Panel>
  )
}

function SearchLine({
  line,
  search,
  onChange,
  onRemove,
}: LineProps & { search: StockSearch; onChange: (search: StockSearch) => void }) {
  const set = (changed: Partial<StockSearch>) => onChange({ ...search, ...changed })
  return (
    <Panel title={`Search ${line}`} actions={<Button onPress={onRemove}>Remove search {line}</Button>}>
      <div className={styles['fields']}>
        <KeptText label="Where" value={search.where} onChange={(where) => set({ where })} />
        <KeptText label="By" value={search.by} onChange={(by) => set({ by })} />
        <DateField label="On" value={search.on} onChange={(on) => set({ on })} />
        <div className={styles['wide']}>
          <KeptText label="Answer" value={search.answer} onChange={(answer) => set({ answer })} />
        </div>
        <LineDocuments
          label="Documents"
          value={search.attachmentIds}
          onChange={(attachmentIds) => set({ attachmentIds })}
        />
      </div>
    </Panel>
  )
}
