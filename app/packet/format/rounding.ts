import { groupedNumber } from '../../evidence/catalog/grouped-number.ts'

/** A column of figures whose total is summed before rounding. */
interface SummedColumn {
  /** "sq ft of area": what stands after the sum. */
  readonly unit: string
  readonly values: readonly number[]
  readonly total: number
  /** Places that lines and total are printed with. */
  readonly decimals: number
}

/** The rule by which totals are made, and, for columns where it shows, what the lines give when they are added up as printed. */
export function roundingNote(columns: readonly SummedColumn[]): string {
  const rule = 'Each figure is rounded once, when it is printed; totals are sums of the lines before rounding.'
  const apart = columns.flatMap(({ unit, values, total, decimals }) => {
    const printed = values.reduce((sum, value) => sum + Number(value.toFixed(decimals)), 0)
    const [asPrinted, shown] = [printed.toFixed(decimals), total.toFixed(decimals)]
    return asPrinted === shown
      ? []
      : [`${groupedNumber(Number(asPrinted), decimals)} for ${groupedNumber(Number(shown), decimals)} ${unit}`]
  })
  if (apart.length === 0) return `${rule} Added up as printed, the lines give the printed totals.`
  return `${rule} Added up as printed, the lines give ${apart.join(', ')}: the difference is rounding.`
}
