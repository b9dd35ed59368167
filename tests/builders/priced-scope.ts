import { scopeSchema, type JobScope } from '../../app/scope/scope-record.ts'

/** A scope that is offered, with an invented price book and two percentages: some lines have a price, some have none. */
export function aPricedScope(given: Parameters<typeof scopeSchema.parse>[0] = {}): JobScope {
  const prices = [
    ['covering', 'square', '612.35'],
    ['underlayment', 'square', '88.20'],
    ['tear-off', 'square', '95.00'],
    ['ridge', 'ft', '18.333'],
    ['hip', 'ft', '18.25'],
    ['disposal', 'short-ton', '61.75'],
    ['replace-field-tile', 'each', '34.40'],
    ['covering-waste', 'square', '612.35'],
  ] as const
  return {
    choices: scopeSchema.parse({
      isOffered: true,
      percentages: [
        { id: 'o', name: 'Overhead', percent: '12.5', of: 'lines' },
        { id: 't', name: 'Sales tax', percent: '6.75', of: 'so-far' },
      ],
      ...Object(given),
    }),
    book: {
      fileName: 'invented-prices.csv',
      sha256: 'ab'.repeat(32),
      decimalMark: 'point',
      leftOut: 0,
      rows: prices.map(([code, unit, price], i) => ({ line: i + 2, code, description: '', unit, price })),
    },
  }
}
