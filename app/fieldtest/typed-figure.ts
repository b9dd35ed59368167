/**
 * A figure with whatever stands after it, as people write it: "35", "35 lbf", "15,9 kgf", "2 1/4 in", "−3". The unit is in
 * lower case, empty when there is none. Null where no figure begins the text.
 */
export function readFigure(text: string): { readonly value: number; readonly unit: string } | null {
  const match = /^([-−+]?)\s*(?:(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)|(\d*[.,]?\d+|\d+[.,]))\s*(.*)$/.exec(text.trim())
  if (match === null) return null
  const [, sign = '', whole = '0', top, bottom, decimal, unit = ''] = match
  const size = decimal === undefined ? Number(whole) + Number(top) / Number(bottom) : Number(decimal.replace(',', '.'))
  if (!Number.isFinite(size)) return null
  return { value: sign === '-' || sign === '−' ? -size : size, unit: unit.trim().toLowerCase() }
}
