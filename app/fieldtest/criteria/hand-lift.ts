import type { Criterion } from './criterion.ts'

/** The hand-lift survey. Its figures are often quoted in the trade; nobody is on record for them. */
export const handLift: Criterion = {
  key: 'hand-lift',
  name: 'Hand-lift survey',
  rule: { kind: 'lift-limit', liftIn: 2, forceLbf: 35 },
  scope: 'Mechanically fastened roof tile, nose pulled by hand gauge. It sorts tiles for a closer look.',
  source: 'Common practice in the trade, no source. No standard was found that states it.',
  status: 'common practice, no source',
  use: 'anyone',
  cautions: ['The 35 lbf appears to be borrowed from a clause for mortar-set and adhesive-set tile.'],
  effectiveFrom: '',
  effectiveUntil: '',
}
