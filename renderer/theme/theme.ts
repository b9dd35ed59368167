/** Light, dark, or as the machine is set. */
export type Theme = 'light' | 'dark' | 'system'

const KEY = 'battenbook-theme'

/** The theme that the person chose on this machine. */
export function storedTheme(): Theme {
  const stored = localStorage.getItem(KEY)
  return stored === 'light' || stored === 'dark' ? stored : 'system'
}

/** Shows a theme and keeps it for the next start. */
export function chooseTheme(theme: Theme): void {
  if (theme === 'system') localStorage.removeItem(KEY)
  else localStorage.setItem(KEY, theme)
  showTheme(theme)
}

/** Shows a theme without keeping it. */
export function showTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset['theme']
  else document.documentElement.dataset['theme'] = theme
}
