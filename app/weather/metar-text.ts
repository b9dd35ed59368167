/** One report of a bulletin or list, on one line again, and the line of the file where it began. */
export interface ReportText {
  readonly line: number
  readonly text: string
}

const START = /^(?:(?:METAR|SPECI|TAF)\s+)?(?:COR\s+|AMD\s+)?[A-Z0-9]{4}\s+[O\d]\d{5}Z\b/
const HEADINGS = [/^\d{1,4}$/, /^[A-Z]{4}\d{0,2}\s+[A-Z]{4}\s+\d{6}(\s+[A-Z]{3})?$/, /^(METAR|SPECI|TAF)$/, /^NNNN$/]

/** Takes the envelope off a bulletin and joins the lines of each report. Control characters and hard spaces are dropped. */
export function reportTexts(text: string): readonly ReportText[] {
  const reports: ReportText[] = []
  let isOpen = false
  for (const [index, written] of text.split('\n').entries()) {
    const line = readable(written).trim()
    if (line === '' || line.startsWith('#') || HEADINGS.some((heading) => heading.test(line))) continue
    const last = reports.at(-1)
    if (isOpen && last !== undefined && !START.test(line)) {
      reports[reports.length - 1] = { ...last, text: `${last.text} ${line}` }
    } else {
      reports.push({ line: index + 1, text: line })
    }
    isOpen = !line.endsWith('=')
  }
  return reports
}

/** Without what a bulletin is wrapped in: control characters, hard spaces, a mark of byte order. */
function readable(written: string): string {
  return [...written.replace(/[\t\u00a0]/g, ' ')]
    .filter((character) => character >= ' ' && character !== '\u007f' && character !== '\ufeff')
    .join('')
}
