import { byCardName, isPassedOver } from '../../app/evidence/card-order.ts'

/**
 * Files of a drop. `paths`: what was dropped, folders whole, since the desk walks folders itself. `upload`: every file
 * inside dropped folders too, since a browser can only send files.
 */
export async function droppedFiles(transfer: DataTransfer, drop: 'paths' | 'upload'): Promise<readonly File[]> {
  if (drop === 'paths') return [...transfer.files]
  // Entries and files have to be taken before the first wait: a drop's data is gone afterwards.
  const items = [...transfer.items].map((item) => ({ entry: item.webkitGetAsEntry(), file: item.getAsFile() }))
  const found = await Promise.all(
    items.map(async ({ entry, file }) => (entry === null ? onlyFile(file) : filesIn(entry))),
  )
  return found.flat()
}

/** Files of a folder that was chosen, in the order of a card; a path's parts are parted by `/`. */
export function chosenFolderFiles(files: readonly File[]): readonly File[] {
  return files
    .filter((file) => !file.webkitRelativePath.split('/').slice(1).some(isPassedOver))
    .toSorted((a, b) => byCardName(a.webkitRelativePath, b.webkitRelativePath))
}

function onlyFile(file: File | null): readonly File[] {
  return file === null ? [] : [file]
}

async function filesIn(entry: FileSystemEntry): Promise<readonly File[]> {
  if (isFile(entry)) return [await new Promise<File>((resolve, reject) => entry.file(resolve, reject))]
  if (!isFolder(entry)) return []
  const inside = (await entriesIn(entry.createReader())).filter(({ name }) => !isPassedOver(name))
  // A folder is read in no order; photos get their numbers in this one.
  const found = await Promise.all(inside.toSorted((a, b) => byCardName(a.name, b.name)).map(filesIn))
  return found.flat()
}

/** A reader answers at most 100 entries at a time, and an empty list at the end. */
async function entriesIn(reader: FileSystemDirectoryReader): Promise<readonly FileSystemEntry[]> {
  const some = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject))
  return some.length === 0 ? [] : [...some, ...(await entriesIn(reader))]
}

function isFile(entry: FileSystemEntry): entry is FileSystemFileEntry {
  return entry.isFile
}

function isFolder(entry: FileSystemEntry): entry is FileSystemDirectoryEntry {
  return entry.isDirectory
}
