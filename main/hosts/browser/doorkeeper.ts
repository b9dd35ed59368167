import { randomBytes, timingSafeEqual } from 'node:crypto'
import type { IncomingMessage } from 'node:http'

/** Decides who may come in: one secret per start, exchanged for a cookie; requests from other pages are turned away. */
export interface Doorkeeper {
  /** The secret for the address that is handed to the person, never logged. */
  readonly token: string
  /** The cookie to set when the token is right; null when it isn't. */
  readonly exchange: (token: string | null) => string | null
  /** True when the request carries the cookie. */
  readonly knows: (request: IncomingMessage) => boolean
  /** True when the request was made for this very address, and not by a page from elsewhere. */
  readonly sameOrigin: (request: IncomingMessage) => boolean
}

/** Makes the doorkeeper of one start on one port. */
export function createDoorkeeper(port: () => number): Doorkeeper {
  const token = randomBytes(32).toString('base64url')
  const session = randomBytes(32).toString('base64url')
  const cookieName = () => `battenbook-${port()}`
  const hosts = () => [`127.0.0.1:${port()}`, `localhost:${port()}`]
  return {
    token,
    exchange: (given) =>
      given !== null && same(given, token) ? `${cookieName()}=${session}; HttpOnly; SameSite=Strict; Path=/` : null,
    knows: ({ headers }) => {
      const pairs = (headers.cookie ?? '').split(';').map((pair) => pair.trim())
      const mine = pairs.find((pair) => pair.startsWith(`${cookieName()}=`))
      return mine !== undefined && same(mine.slice(cookieName().length + 1), session)
    },
    sameOrigin: ({ headers, method }) => {
      const { host, origin } = headers
      if (host === undefined || !hosts().includes(host)) return false
      const site = headers['sec-fetch-site']
      if (site !== undefined && site !== 'same-origin' && site !== 'none') return false
      if (origin !== undefined) return origin === `http://${host}`
      // Browsers always name the origin of a request that can change something.
      return method === 'GET' || method === 'HEAD'
    },
  }
}

function same(a: string, b: string): boolean {
  const left = Buffer.from(a)
  const right = Buffer.from(b)
  return left.length === right.length && timingSafeEqual(left, right)
}
