import type { MeasureKey, Measurement } from '../finding.ts'

/** What a measured value is, and its unit as printed. */
export interface MeasureEntry {
  readonly label: string
  /** Empty for plain counts. */
  readonly unit: 'in' | 'ft' | 'sq ft' | '%' | ''
}

export const measures = {
  'lift-in': { label: 'Lift of the nose', unit: 'in' },
  'slip-in': { label: 'Slip', unit: 'in' },
  'crack-length-in': { label: 'Crack length', unit: 'in' },
  'crack-width-in': { label: 'Crack width', unit: 'in' },
  'gap-in': { label: 'Gap', unit: 'in' },
  'bared-exposure-in': { label: 'Strip laid bare', unit: 'in' },
  'fastener-raised-in': { label: 'Fastener raised', unit: 'in' },
  'fasteners-per-tile': { label: 'Fasteners per piece', unit: '' },
  'hole-width-in': { label: 'Hole width', unit: 'in' },
  'pad-length-in': { label: 'Pad length', unit: 'in' },
  'pad-width-in': { label: 'Pad width', unit: 'in' },
  'moisture-percent': { label: 'Moisture reading', unit: '%' },
  'size-in': { label: 'Size', unit: 'in' },
  'length-ft': { label: 'Length', unit: 'ft' },
  'area-sqft': { label: 'Area', unit: 'sq ft' },
} as const satisfies Record<MeasureKey, MeasureEntry>

const byWords = {
  instrument: 'with an instrument',
  hand: 'by hand',
  eye: 'by eye',
} as const satisfies Record<Measurement['by'], string>

/** "Lift of the nose 1.25 in at 12 lbf, with a spring gauge; note". Says when a lift has no force. */
export function measurementWords(measurement: Measurement): string {
  const { label, unit } = measures[measurement.what]
  const value = `${measurement.value}${unit === '%' ? '%' : unit === '' ? '' : ` ${unit}`}`
  const instrument = measurement.instrument.trim()
  const by = measurement.by === 'instrument' && instrument !== '' ? `with ${instrument}` : byWords[measurement.by]
  const note = measurement.note.trim()
  return `${label} ${value}${forceWords(measurement)}, ${by}${note === '' ? '' : `; ${note}`}`
}

function forceWords({ what, forceLbf }: Measurement): string {
  if (forceLbf !== null) return ` at ${forceLbf} lbf`
  return what === 'lift-in' ? ', force not recorded' : ''
}
