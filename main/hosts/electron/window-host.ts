import type { BrowserWindow, IpcMain, IpcMainInvokeEvent, Protocol, Session, WebContents } from 'electron'
import type { Desk } from '../../desk/desk.ts'
import { throughJson } from '../../desk/through-json.ts'
import { listPageFiles } from '../page-files.ts'
import { serveProtocol } from './serve-protocol.ts'
import { SCHEME, pageOrigin } from './scheme.ts'

/** The parts of Electron that the host uses, passed in so that a stand-in can take their place. */
export interface ElectronParts {
  readonly BrowserWindow: new (options: Electron.BrowserWindowConstructorOptions) => BrowserWindow
  readonly ipcMain: Pick<IpcMain, 'handle'>
  readonly protocol: Pick<Protocol, 'handle'>
  readonly session: { readonly defaultSession: Session }
}

/** The one channel for calls, and the one for events. */
export const channels = { call: 'battenbook:call', event: 'battenbook:event' } as const

/** Opens the workstation's window over a desk: one channel, one protocol, nothing else let in or out. */
export function openWindow(
  electron: ElectronParts,
  { desk, pagesFolder, preload }: { desk: Desk; pagesFolder: string; preload: string },
): BrowserWindow {
  electron.protocol.handle(SCHEME, serveProtocol(desk, listPageFiles(pagesFolder)))
  electron.session.defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => decide(false))
  electron.ipcMain.handle(channels.call, (event: IpcMainInvokeEvent, name: unknown, input: unknown) => {
    if (!isOwnPage(event.senderFrame?.url)) throw new Error('Calls are taken from the workstation only.')
    return desk.call(String(name), throughJson(input))
  })
  const window = new electron.BrowserWindow({
    width: 1440,
    height: 900,
    minWidth: 1280,
    minHeight: 800,
    show: false,
    title: 'Battenbook',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: true,
    },
  })
  keepInside(window.webContents)
  const stop = desk.listen((event) => window.webContents.send(channels.event, event))
  window.on('closed', stop)
  window.once('ready-to-show', () => window.show())
  void window.loadURL(`${pageOrigin}/`)
  return window
}

/** The window shows our pages only: no other address, no second window, no embedded page. */
function keepInside(contents: WebContents): void {
  contents.on('will-navigate', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault()
  })
  contents.on('will-attach-webview', (event) => event.preventDefault())
  contents.setWindowOpenHandler(() => ({ action: 'deny' }))
}

function isOwnPage(address: string | undefined): boolean {
  return address !== undefined && (address === pageOrigin || address.startsWith(`${pageOrigin}/`))
}
