/** 12345.5 as "12,345.5": thousands grouped, at most `decimals` places, no trailing zeros. */
export function groupedNumber(value: number, decimals = 2): string {
  const [whole = '0', fraction] = String(Number(value.toFixed(decimals))).split('.')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  return fraction === undefined ? grouped : `${grouped}.${fraction}`
}
