/** Beginnings that a spreadsheet may take for a formula, full-width signs among them (OWASP, CSV injection). */
const FORMULA_START = /^[\s\u00a0]*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/
const PLAIN_NUMBER = /^-?\d+(\.\d+)?$/

/** A cell that can't start a formula: an apostrophe goes before one that could. Plain numbers such as -12.5 stay as they are. */
export function safeCell(value: string | number | null): string {
  if (value === null) return ''
  const text = String(value)
  if (PLAIN_NUMBER.test(text)) return text
  return FORMULA_START.test(text) ? `'${text}` : text
}
