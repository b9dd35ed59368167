import { useState } from 'react'
import { chooseTheme, storedTheme, type Theme } from '../theme/theme.ts'
import { IconButton } from '../ui/icon-button.tsx'

const next = { system: 'light', light: 'dark', dark: 'system' } as const satisfies Record<Theme, Theme>
const words = { system: 'as this machine is set', light: 'light', dark: 'dark' } as const satisfies Record<
  Theme,
  string
>

/** Goes through the themes: as the machine is set, light, dark. */
export function ThemeButton() {
  const [theme, setTheme] = useState(storedTheme)
  return (
    <IconButton
      icon={theme}
      label={`Theme: ${words[theme]}. Change to ${words[next[theme]]}`}
      onPress={() => {
        chooseTheme(next[theme])
        setTheme(next[theme])
      }}
    />
  )
}
