import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron'
import { AppFailure } from '../../../app/contract/app-error.ts'
import { openDesk } from '../../desk/open-desk.ts'
import { pagesFolder, programFolder } from '../../program.ts'
import { electronBinding } from './binding.ts'
import { libraryArgument } from './library-argument.ts'
import { menuTemplate } from './menu.ts'
import { SCHEME } from './scheme.ts'
import { openWindow } from './window-host.ts'

protocol.registerSchemesAsPrivileged([
  { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
])

async function start(): Promise<void> {
  const library = libraryArgument(process.argv, { isPackaged: app.isPackaged, documents: app.getPath('documents') })
  // A packaged program has only Electron's build of the driver, in its usual place.
  const beside = electronBinding(programFolder)
  const desk = await openDesk(library, { drop: 'paths', ...(existsSync(beside) ? { nativeBinding: beside } : {}) })
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform)))
  const preload = join(dirname(fileURLToPath(import.meta.url)), 'preload.cjs')
  openWindow({ BrowserWindow, ipcMain, protocol, session }, { desk, pagesFolder, preload })
  app.on('window-all-closed', () => app.quit())
  let closed = false
  // However the program is left, by its window or its menu, this comes before the end.
  app.on('will-quit', (event) => {
    if (closed) return
    event.preventDefault()
    void desk.close().finally(() => {
      closed = true
      app.quit()
    })
  })
}

app
  .whenReady()
  .then(start)
  .catch((cause: unknown) => {
    const words =
      cause instanceof AppFailure ? `${cause.error.message}\n${cause.error.help}` : 'Battenbook could not start.'
    dialog.showErrorBox('Battenbook', words)
    app.exit(1)
  })
