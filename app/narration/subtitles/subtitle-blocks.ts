/** Lines of a subtitle file that stand together, and the number of the first, counted from 1. */
export interface SubtitleBlock {
  readonly line: number
  readonly lines: readonly string[]
}

/** Parts a file at its blank lines. Line ends may be CRLF, LF or CR, mixed as they come. */
export function subtitleBlocks(text: string): readonly SubtitleBlock[] {
  const blocks: { line: number; lines: string[] }[] = []
  let isOpen = false
  for (const [at, line] of text.split(/\r\n|\r|\n/).entries()) {
    const last = blocks.at(-1)
    if (line === '') isOpen = false
    else if (isOpen && last !== undefined) last.lines.push(line)
    else {
      blocks.push({ line: at + 1, lines: [line] })
      isOpen = true
    }
  }
  return blocks
}
