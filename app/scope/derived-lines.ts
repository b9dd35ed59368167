import { components } from '../evidence/catalog/components.ts'
import {
  approximately,
  decimalWords,
  percentOf,
  plus,
  printedDecimal,
  rounded,
  sumOf,
  times,
  wholeUp,
  ZERO,
  type Decimal,
} from './decimal.ts'
import { coveringPieces, pieceOf } from './repair-actions.ts'
import type { ScopeFacts } from './scope-facts.ts'
import { joinedTraces, type RuledLine, type ScopeLine } from './scope-line.ts'
import { wholePieces } from '../roof/quantities.ts'

/** Lines of a replacement that follow from others: quantities that a person set by hand count, lines left out do not. */
export function derivedOfReplacement(lines: readonly ScopeLine[], facts: ScopeFacts): readonly RuledLine[] {
  const standing = lines.filter(({ leftOutBecause }) => leftOutBecause === null)
  const of = (...keys: readonly string[]) => standing.filter(({ key }) => keys.includes(key))
  const covering = of('covering')
  return [
    ...battens(covering, facts),
    ...fasteners(covering, facts, (squares) =>
      facts.piecesPerSquare === null ? null : approximately(squares) * facts.piecesPerSquare,
    ),
    ...setting({ covering, caps: of('ridge', 'hip') }, facts),
    ...disposal(of('tear-off'), facts, (squares) => ({ squares, words: `${decimalWords(squares)} squares` })),
    ...coveringWaste(covering, facts),
  ]
}

/** Lines of a repair that follow from its others. */
export function derivedOfRepair(lines: readonly ScopeLine[], facts: ScopeFacts): readonly RuledLine[] {
  const standing = lines.filter(({ leftOutBecause, unit }) => leftOutBecause === null && unit === 'each')
  const replaced = standing.filter(({ key }) => isWorkOn(key, ['replace']))
  const handled = standing.filter(({ key }) => isWorkOn(key, ['replace', 'set-again']))
  return [
    ...fasteners(handled, facts, approximately),
    ...disposal(replaced, facts, (pieces) => {
      if (facts.piecesPerSquare === null) return null
      const each = printedDecimal(facts.piecesPerSquare, 2)
      const squares = printedDecimal(approximately(pieces) / approximately(each), 4)
      return {
        squares,
        words: `${decimalWords(pieces)} ${facts.pieces} / ${decimalWords(each)} a square = ${decimalWords(squares)} squares`,
      }
    }),
    ...pieceWaste(replaced, facts),
  ]
}

function isWorkOn(key: string, actions: readonly string[]): boolean {
  return actions.some((action) =>
    coveringPieces.some((piece) => key === `${action}-${piece}` || key === `${action}-${piece}-stated`),
  )
}

function quantityOf(lines: readonly ScopeLine[]): Decimal {
  return sumOf(lines.map(({ quantity }) => quantity ?? ZERO))
}

function derived(
  from: readonly ScopeLine[],
  line: Pick<RuledLine, 'key' | 'group' | 'words' | 'unit' | 'quantity' | 'working'> & {
    readonly missing?: string
    readonly toOrder?: string
    readonly assumptions?: readonly string[]
    readonly notes?: readonly string[]
  },
): RuledLine {
  const { missing = null, toOrder = null, assumptions = [], notes = [], ...rest } = line
  return { ...rest, missing, toOrder, assumptions, notes, traces: joinedTraces(from.map(({ traces }) => traces)) }
}

function battens(covering: readonly ScopeLine[], { battensLaid, exposureIn }: ScopeFacts): readonly RuledLine[] {
  if (!battensLaid || covering.length === 0) return []
  const squares = quantityOf(covering)
  const line = { key: 'battens', group: 'setting', words: 'Battens', unit: 'ft' } as const
  if (exposureIn === null) {
    const missing = 'State the exposure on the job sheet: battens lie an exposure apart.'
    return [derived(covering, { ...line, quantity: null, missing, working: 'Area x 12 / exposure.' })]
  }
  const quantity = printedDecimal((approximately(squares) * 100 * 12) / exposureIn, 1)
  return [
    derived(covering, {
      ...line,
      quantity,
      working: `${decimalWords(squares)} squares x 100 sq ft x 12 / ${exposureIn} in = ${decimalWords(quantity)} ft.`,
      assumptions: ['One row of battens for each course: common practice, no source.'],
    }),
  ]
}

function fasteners(
  from: readonly ScopeLine[],
  { fastenersPerPiece, pieces }: ScopeFacts,
  countOf: (quantity: Decimal) => number | null,
): readonly RuledLine[] {
  if (fastenersPerPiece === null || from.length === 0) return []
  const line = { key: 'fasteners', group: 'setting', words: 'Fasteners', unit: 'each' } as const
  const count = countOf(quantityOf(from))
  if (count === null) {
    const missing = 'State exposure and cover width on the job sheet first.'
    return [derived(from, { ...line, quantity: null, missing, working: 'Pieces x fasteners for each.' })]
  }
  const whole = wholePieces(count)
  const total = whole * fastenersPerPiece
  return [
    derived(from, {
      ...line,
      quantity: printedDecimal(total, 0),
      working: `${whole.toLocaleString('en-US')} ${pieces} x ${fastenersPerPiece} stated for each = ${total.toLocaleString('en-US')}.`,
    }),
  ]
}

function setting(
  { covering, caps }: { readonly covering: readonly ScopeLine[]; readonly caps: readonly ScopeLine[] },
  { setting: chosen }: ScopeFacts,
): readonly RuledLine[] {
  if (chosen === null) return []
  const [from, line] =
    chosen.kind === 'mortar'
      ? ([caps, { key: 'mortar-caps', words: 'Mortar under ridge and hip caps', unit: 'ft' }] as const)
      : ([covering, { key: 'foam', words: 'Foam or adhesive under the covering', unit: 'square' }] as const)
  if (from.length === 0) return []
  const quantity = quantityOf(from)
  const sum = from.map((one) => `${one.words.toLowerCase()} ${decimalWords(one.quantity ?? ZERO)}`).join(' + ')
  return [
    derived(from, {
      ...line,
      group: 'setting',
      quantity,
      working: `As much as ${sum}.`,
      ...(chosen.isStated ? { notes: [chosen.basis] } : { assumptions: [chosen.basis] }),
    }),
  ]
}

function disposal(
  from: readonly ScopeLine[],
  { weightLbPerSquare }: ScopeFacts,
  squaresOf: (quantity: Decimal) => { readonly squares: Decimal; readonly words: string } | null,
): readonly RuledLine[] {
  if (from.length === 0) return []
  const line = {
    key: 'disposal',
    group: 'disposal',
    words: 'Cart away and dispose, by weight',
    unit: 'short-ton',
  } as const
  const taken = squaresOf(quantityOf(from))
  if (weightLbPerSquare === null || taken === null) {
    const missing =
      weightLbPerSquare === null
        ? 'State the weight of the covering, pounds a square.'
        : 'State exposure and cover width on the job sheet first.'
    return [derived(from, { ...line, quantity: null, missing, working: 'Squares x pounds a square / 2,000.' })]
  }
  const { value, basis, isAssumed } = weightLbPerSquare
  const pounds = times(taken.squares, value)
  // Exact: a 2,000th is five 10,000ths.
  const quantity = rounded({ units: pounds.units * 5n, places: pounds.places + 4 }, 2)
  return [
    derived(from, {
      ...line,
      quantity,
      working: `${taken.words}; x ${decimalWords(value)} lb a square = ${decimalWords(rounded(pounds, 0))} lb; / 2,000 = ${decimalWords(quantity)} short tons.`,
      assumptions: isAssumed ? [`A weight of ${decimalWords(value)} lb a square: ${basis}.`] : [],
      notes: [
        ...(isAssumed ? [] : [`Weight ${basis}.`]),
        'Only the covering is weighed: underlayment, battens and packing are not in it.',
      ],
    }),
  ]
}

function coveringWaste(covering: readonly ScopeLine[], facts: ScopeFacts): readonly RuledLine[] {
  const { wastePercent, piecesPerSquare, pieces } = facts
  if (wastePercent === null || covering.length === 0) return []
  const squares = quantityOf(covering)
  const quantity = rounded(percentOf(wastePercent, squares), 2)
  const count = piecesPerSquare === null ? null : wholePieces(approximately(plus(squares, quantity)) * piecesPerSquare)
  return [
    derived(covering, {
      key: 'covering-waste',
      group: 'allowance',
      words: `Allowance for waste of the covering, ${decimalWords(wastePercent)} %`,
      unit: 'square',
      quantity,
      ...(count === null
        ? {}
        : { toOrder: `${count.toLocaleString('en-US')} ${pieces}, measured and allowance together` }),
      working: `${decimalWords(squares)} squares x ${decimalWords(wastePercent)} % = ${decimalWords(quantity)} squares.`,
      notes: ['The percentage was chosen by a person on the job sheet.'],
    }),
  ]
}

function pieceWaste(replaced: readonly ScopeLine[], { wastePercent }: ScopeFacts): readonly RuledLine[] {
  if (wastePercent === null) return []
  return coveringPieces.flatMap((piece): RuledLine[] => {
    const from = replaced.filter(({ key }) => key === `replace-${piece}` || key === `replace-${piece}-stated`)
    if (from.length === 0) return []
    const count = quantityOf(from)
    const share = percentOf(wastePercent, count)
    const quantity = wholeUp(share)
    return [
      derived(from, {
        key: `waste-${pieceOf(piece)}`,
        group: 'allowance',
        words: `Allowance for waste of ${components[piece].many}, ${decimalWords(wastePercent)} %`,
        unit: 'each',
        quantity,
        working: `${decimalWords(count)} x ${decimalWords(wastePercent)} % = ${decimalWords(share)}, up to ${decimalWords(quantity)} whole.`,
        notes: ['The percentage was chosen by a person on the job sheet.'],
      }),
    ]
  })
}
