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
  cautions: [
    'The 35 lbf appears to be borrowed from a clause for mortar-set and adhesive-set tile.',
    'A tile that rises is not held at that moment. Since when, and why, a lift does not show: it may never have been well fastened or bonded, it may have aged, been walked on or repaired, or been loosened by the lifting.',
  ],
  effectiveFrom: '',
  effectiveUntil: '',
}
