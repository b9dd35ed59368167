import { findingLabel, type Finding } from '../../app/evidence/finding.ts'
import { Button } from '../ui/button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './plan-panels.module.css'
import type { PinKind, Pinning } from './use-pin-tool.tsx'

const kinds = [
  { key: 'point', label: 'Point' },
  { key: 'line', label: 'Line' },
  { key: 'area', label: 'Area' },
] as const

const teaching = {
  point: 'Click the place.',
  line: 'Click along the line, such as a ridge or valley, then finish.',
  area: 'Click round the area, then finish.',
} as const satisfies Record<PinKind, string>

interface PinPanelProps {
  readonly pinning: Pinning
  readonly kind: PinKind
  readonly onKind: (kind: PinKind) => void
  readonly onCancel: () => void
  /** What the pin is for; left out where there is only one thing it can be for. */
  readonly target?: {
    readonly findings: readonly Finding[]
    readonly finding: Finding | null
    readonly words: (finding: Finding) => string
    readonly onChoose: (finding: Finding | null) => void
  }
}

/** What kind of pin is put down, and for which finding. */
export function PinPanel({ pinning, kind, onKind, onCancel, target }: PinPanelProps) {
  return (
    <section className={styles['tool']} aria-label="Place a pin">
      <p className={styles['lead']}>{teaching[kind]}</p>
      <div className={styles['pair']}>
        {target === undefined ? null : (
          <SelectField
            label="Pin for"
            options={target.findings.map((finding) => ({
              key: finding.id,
              label: `${findingLabel(finding.number)} ${target.words(finding)}`,
              section: finding.pin === null ? 'Without a pin' : 'Move its pin',
            }))}
            value={target.finding?.id ?? null}
            emptyLabel="A new finding here"
            onChange={(id) => target.onChoose(target.findings.find((finding) => finding.id === id) ?? null)}
          />
        )}
        <SegmentedChoice label="Shape" options={kinds} value={kind} onChange={onKind} />
      </div>
      {pinning.refusal === null ? null : (
        <p className={styles['refusal']} role="alert">
          {pinning.refusal}
        </p>
      )}
      <div className={styles['line']}>
        {kind === 'point' ? null : (
          <>
            <Button look="main" onPress={pinning.finish} isDisabled={!pinning.canFinish}>
              Finish <KeyHint keys="Enter" />
            </Button>
            <Button onPress={pinning.removeLast} isDisabled={pinning.points.length === 0}>
              Remove last <KeyHint keys="Backspace" />
            </Button>
          </>
        )}
        <Button look="quiet" onPress={onCancel}>
          Cancel <KeyHint keys="Escape" />
        </Button>
      </div>
    </section>
  )
}
