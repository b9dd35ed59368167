/** The invented price book of the sample job and what its office chose for the scope. No such prices were ever asked by anyone. */
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

const FILE = 'invented-price-book.csv'

/** Code, description, unit, unit price: the codes of lines by rule, and some that are linked by hand. */
const PRICES = [
  ['covering', 'Concrete tile laid (invented price)', 'square', '612.35'],
  ['covering-waste', 'Concrete tile, material only (invented price)', 'square', '341.00'],
  ['underlayment', 'Two layers of sheet, self-adhered on top (invented price)', 'square', '188.20'],
  ['tear-off', 'Tile and sheet taken off (invented price)', 'square', '96.50'],
  ['ridge', 'Ridge caps on a nailer (invented price)', 'ft', '18.35'],
  ['hip', 'Hip caps on a nailer (invented price)', 'ft', '19.60'],
  ['valley', 'Valley metal, 16 oz (invented price)', 'ft', '21.15'],
  ['eave', 'Eave metal (invented price)', 'ft', '6.45'],
  ['rake', 'Rake metal (invented price)', 'ft', '8.90'],
  ['flash-pipe-penetration', 'Lead flashing at a pipe (invented price)', 'each', '118.00'],
  ['disposal', 'Haul and tip (invented price)', 'short ton', '84.75'],
  ['replace-field-tile', 'Take out and lay one tile of matching stock (invented price)', 'each', '74.40'],
  ['set-again-field-tile', 'Set one tile again (invented price)', 'each', '38.25'],
  ['cap-again', 'Take up one cap and set it again (invented price)', 'each', '29.80'],
  ['small-sheet', 'Patch of underlayment (invented price)', 'sq ft', '11.375'],
  ['permit', 'Permit of the invented city (invented price)', 'job', '265.00'],
]

/** Goes into job.json as it stands. */
export const SCOPE = {
  isOffered: true,
  stated: {
    weightLbPerSquare: '940',
    weightSource: 'one tile weighed on a kitchen scale on site, 10.6 lb, times tiles a square (invented)',
    fastenersPerPiece: 1,
    battens: 'none',
  },
  changes: [
    {
      bid: 'replacement',
      key: 'fasteners',
      leftOutBecause: 'In the price of the tile laid.',
    },
    {
      bid: 'repair',
      key: 'set-again-hip-tile-stated',
      byHand: { quantity: '9', why: 'whole run from the eave to the first sound cap, counted on photo (invented)' },
    },
  ],
  own: [
    {
      id: 'permit',
      words: 'Permit',
      unit: 'job',
      repair: '1',
      replacement: '1',
      source: 'fee list of the invented city',
    },
  ],
  links: [
    { key: 'own-permit', code: 'permit' },
    { key: 'set-again-ridge-tile', code: 'cap-again' },
    { key: 'set-again-hip-tile-stated', code: 'cap-again' },
    { key: 'replace-underlayment-area', code: 'small-sheet' },
    { key: 'replace-field-tile-stated', code: 'replace-field-tile' },
  ],
  currency: 'USD',
  percentages: [
    { id: 'overhead', name: 'Overhead and supervision', percent: '12.5', of: 'lines' },
    { id: 'tax', name: 'Sales tax', percent: '6.5', of: 'so-far' },
  ],
  prices: FILE,
}

/** @param {string} jobFolder */
export async function writePriceBook(jobFolder) {
  await mkdir(join(jobFolder, 'prices'), { recursive: true })
  const quoted = (/** @type {string} */ cell) => (/[",]/.test(cell) ? `"${cell}"` : cell)
  const lines = [['code', 'description', 'unit', 'unit price'], ...PRICES].map((row) => row.map(quoted).join(','))
  await writeFile(join(jobFolder, 'prices', FILE), `${lines.join('\r\n')}\r\n`)
}
