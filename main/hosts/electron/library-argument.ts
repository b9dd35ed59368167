import { join } from 'node:path'

/**
 * The library that the window opens: the one named on the command line, else the one in the documents folder. Switches
 * are meant for the runtime and passed over. Only an unpackaged program has the program's own folder before it.
 */
export function libraryArgument(
  argv: readonly string[],
  { isPackaged, documents }: { isPackaged: boolean; documents: string },
): string {
  const named = argv.slice(1).filter((argument) => !argument.startsWith('-'))
  return named[isPackaged ? 0 : 1] ?? join(documents, 'Battenbook')
}
