import '@fontsource/source-sans-3/400.css'
import '@fontsource/source-sans-3/600.css'
import './theme/tokens.css'
import './theme/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { DeskProvider } from './client/client-context.tsx'
import { httpClient } from './client/http-client.ts'
import { windowClient } from './client/window-client.ts'
import { Desk } from './frame/desk.tsx'
import { fetchFirstScreen } from './frame/screens.ts'
import { showTheme, storedTheme } from './theme/theme.ts'

showTheme(storedTheme())

const bridge = window.battenbook
const client = bridge === undefined ? httpClient() : windowClient(bridge)
const place = document.getElementById('desk')
if (place !== null) {
  await fetchFirstScreen(location.pathname)
  createRoot(place).render(
    <StrictMode>
      <DeskProvider client={client}>
        <Desk />
      </DeskProvider>
    </StrictMode>,
  )
}
