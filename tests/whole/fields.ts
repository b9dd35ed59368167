import type { Locator } from 'playwright-core'

/** What a field's help and error say, as a screen reader would read them after its name. */
export function descriptionOf(field: Locator): Promise<string> {
  return field.evaluate((element) =>
    (element.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent ?? '')
      .join(' '),
  )
}

/** Chooses a line of a short list, which opens from a button. */
export async function choose(scope: Locator, label: string, line: string): Promise<void> {
  await scope.getByRole('button', { name: new RegExp(`${label}$`) }).click()
  await scope.page().getByRole('option', { name: line, exact: true }).click()
}

/** Chooses a line of a long list, which is searched by typing. */
export async function search(scope: Locator, label: string, line: string): Promise<void> {
  const field = scope.getByRole('combobox', { name: label })
  await field.scrollIntoViewIfNeeded()
  // A list closes when what is under it scrolls, so that has to be over first.
  await field.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))))
  await field.fill(line)
  await scope.page().getByRole('option', { name: line, exact: true }).click()
}

/** Fills fields by their labels, in order. */
export async function fill(scope: Locator, values: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, value] of Object.entries(values)) await scope.getByLabel(label, { exact: true }).fill(value)
}
