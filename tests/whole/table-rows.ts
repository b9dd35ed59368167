import type { Locator } from 'playwright-core'

/** The rows of a table as they are read out: what stands under each title. */
export async function tableRows(table: Locator): Promise<readonly Readonly<Record<string, string>>[]> {
  const titles = await table.getByRole('columnheader').allInnerTexts()
  const rows: Record<string, string>[] = []
  for (const row of await table
    .getByRole('row')
    .filter({ has: table.page().getByRole('gridcell') })
    .all()) {
    const cells = await row.getByRole('gridcell').allInnerTexts()
    rows.push(Object.fromEntries(titles.map((title, at) => [title.replace(/ [↑↓]$/, ''), cells[at] ?? ''])))
  }
  return rows
}
