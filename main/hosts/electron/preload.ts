import { contextBridge, ipcRenderer, webUtils, type IpcRendererEvent } from 'electron'

// A sandboxed preload can't load other files, so the channel names of window-host.ts stand here a second time; a test compares them.
const CALL = 'battenbook:call'
const EVENT = 'battenbook:event'

contextBridge.exposeInMainWorld('battenbook', {
  call: (name: string, input: unknown): Promise<unknown> => ipcRenderer.invoke(CALL, name, input),
  listen: (on: (event: unknown) => void): (() => void) => {
    const pass = (_event: IpcRendererEvent, value: unknown) => on(value)
    ipcRenderer.on(EVENT, pass)
    return () => ipcRenderer.off(EVENT, pass)
  },
  pathsOf: (files: readonly File[]): string[] => files.map((file) => webUtils.getPathForFile(file)),
})
