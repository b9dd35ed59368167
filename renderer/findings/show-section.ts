/** Scrolls a part of the finding's form to the top of the form, and nothing else on the screen. */
export function showSection(id: string): void {
  const section = document.getElementById(`finding-${id}`)
  const scroller = section?.closest('[data-form-scroller]')
  if (section === null || scroller === null || scroller === undefined) return
  const room = 8
  scroller.scrollBy({ top: section.getBoundingClientRect().top - scroller.getBoundingClientRect().top - room })
}
