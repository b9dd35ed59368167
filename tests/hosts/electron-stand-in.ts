import type { ElectronParts } from '../../main/hosts/electron/window-host.ts'

type CallHandler = (event: { senderFrame: { url: string } | null }, name: unknown, input: unknown) => unknown
type ProtocolHandler = (request: { url: string; method: string; headers: Headers }) => Promise<Response>
type Listener = (...given: never[]) => void

/** Stands in for Electron: keeps what the host registers, so that a test can look at it and use it. */
export function electronStandIn() {
  const handlers = new Map<string, CallHandler>()
  const schemes = new Map<string, ProtocolHandler>()
  const windows: StandInWindow[] = []
  let decidePermission: ((contents: null, permission: string, decide: (given: boolean) => void) => void) | null = null

  class StandInWindow {
    readonly sent: { channel: string; value: unknown }[] = []
    readonly loaded: string[] = []
    readonly on_: [string, Listener][] = []
    readonly contentsOn: [string, Listener][] = []
    openHandler: (() => { action: string }) | null = null
    shown = false
    readonly webContents = {
      on: (name: string, listener: Listener) => this.contentsOn.push([name, listener]),
      send: (channel: string, value: unknown) => this.sent.push({ channel, value }),
      setWindowOpenHandler: (handler: () => { action: string }) => (this.openHandler = handler),
    }
    constructor(readonly options: Record<string, unknown> & { webPreferences?: Record<string, unknown> }) {
      windows.push(this)
    }
    on(name: string, listener: Listener) {
      this.on_.push([name, listener])
    }
    once(name: string, listener: Listener) {
      this.on_.push([name, listener])
    }
    show() {
      this.shown = true
    }
    loadURL(address: string): Promise<void> {
      this.loaded.push(address)
      return Promise.resolve()
    }
    /** Lets an event of the window happen. */
    emit(name: string) {
      for (const [known, listener] of this.on_) if (known === name) Reflect.apply(listener, null, [])
    }
    /** Lets an event of the page happen; true when the host prevented it. */
    emitContents(name: string, event: { url?: string } = {}): boolean {
      let prevented = false
      const given = { ...event, preventDefault: () => (prevented = true) }
      for (const [known, listener] of this.contentsOn) if (known === name) Reflect.apply(listener, null, [given])
      return prevented
    }
  }

  const parts = {
    BrowserWindow: StandInWindow,
    ipcMain: { handle: (channel: string, handler: CallHandler) => handlers.set(channel, handler) },
    protocol: { handle: (scheme: string, handler: ProtocolHandler) => schemes.set(scheme, handler) },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (handler: typeof decidePermission) => (decidePermission = handler),
      },
    },
  }
  return {
    // Only the parts that the host uses are there; the types of the rest don't matter to it.
    parts: parts as unknown as ElectronParts,
    windows,
    handlers,
    schemes,
    /** Calls through the one channel as a page at `from` would; values pass through a structured clone, as in Electron. */
    invoke: async (channel: string, { from, name, input }: { from: string | null; name: unknown; input: unknown }) => {
      const handler = handlers.get(channel)
      if (handler === undefined) throw new Error(`Nothing is registered on ${channel}.`)
      const senderFrame = from === null ? null : { url: from }
      return structuredClone(await handler({ senderFrame }, structuredClone(name), structuredClone(input)))
    },
    allows: (permission: string): boolean => {
      let allowed = true
      decidePermission?.(null, permission, (given) => (allowed = given))
      return allowed
    },
    fetch: (url: string, method = 'GET', headers: Readonly<Record<string, string>> = {}): Promise<Response> => {
      const handler = schemes.get(new URL(url).protocol.replace(':', ''))
      if (handler === undefined) throw new Error(`Nothing is registered for ${url}.`)
      return handler({ url, method, headers: new Headers(headers) })
    },
  }
}
