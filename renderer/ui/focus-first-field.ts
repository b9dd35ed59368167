/** As a `ref`: puts the cursor into the first field of what just appeared, so that one can type at once. */
export function focusFirstField(appeared: HTMLElement | null): void {
  const field = appeared?.querySelector('input:not([type="hidden"], [type="radio"], [type="checkbox"]), textarea')
  if (field instanceof HTMLElement) field.focus()
}
