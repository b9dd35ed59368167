import { readdirSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'

/** A file of the built pages. */
export interface PageFile {
  readonly path: string
  readonly mediaType: string
  /** Names with a content hash never change; the page itself may. */
  readonly lasting: boolean
}

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.wasm': 'application/wasm',
  '.json': 'application/json',
}

/**
 * The built pages, listed once: only what stands in the list can be asked for, so no address can reach outside it.
 * Addresses without a file belong to the screens and get the page itself.
 */
export function listPageFiles(folder: string): { readonly find: (pathname: string) => PageFile | null } {
  const files = new Map<string, PageFile>()
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue
    const path = join(entry.parentPath, entry.name)
    const address = `/${relative(folder, path).split(sep).join('/')}`
    const mediaType = mediaTypes[extname(entry.name)]
    if (mediaType !== undefined) files.set(address, { path, mediaType, lasting: address.startsWith('/assets/') })
  }
  const page = files.get('/index.html') ?? null
  return {
    find: (pathname) => {
      const file = files.get(pathname)
      if (file !== undefined) return file
      return extname(pathname) === '' ? page : null
    },
  }
}
