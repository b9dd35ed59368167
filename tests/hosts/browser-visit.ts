import { request, type IncomingHttpHeaders } from 'node:http'

/** An answer of the loopback host. */
export interface Answer {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly body: Buffer
  readonly text: string
}

/** What is sent; headers and path go out exactly as they are written here. */
export interface Asking {
  readonly method?: string
  readonly path: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: string | Buffer
}

/** Asks a loopback address without any help of a browser: nothing is added but the host. */
export function asking(address: string, { method = 'GET', path, headers = {}, body }: Asking): Promise<Answer> {
  const { hostname, port } = new URL(address)
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method, headers: { connection: 'close', ...headers } }, (response) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part))
      response.on('error', reject)
      response.on('end', () => {
        const whole = Buffer.concat(parts)
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: whole,
          text: whole.toString('utf8'),
        })
      })
    })
    sent.on('error', reject)
    sent.end(body)
  })
}

/** A page that came in by the entrance: it has the cookie and names its origin, as a browser does. */
export interface Visit {
  readonly headers: Readonly<Record<string, string>>
  readonly ask: (asking: Asking) => Promise<Answer>
  readonly call: (name: string, input: unknown) => Promise<unknown>
}

/** Goes in by the entrance. */
export async function visit({ address, entrance }: { address: string; entrance: string }): Promise<Visit> {
  const { pathname, search } = new URL(entrance)
  const entered = await asking(address, { path: `${pathname}${search}` })
  const [cookie = ''] = entered.headers['set-cookie']?.[0]?.split(';') ?? []
  const headers = { cookie, origin: address.replace(/\/$/, ''), 'sec-fetch-site': 'same-origin' }
  return {
    headers,
    ask: (given) => asking(address, { ...given, headers: { ...headers, ...given.headers } }),
    call: async (name, input) => {
      const { text } = await asking(address, {
        method: 'POST',
        path: `/call/${name}`,
        headers: { ...headers, 'content-type': 'application/json' },
        body: JSON.stringify(input) ?? '',
      })
      return JSON.parse(text)
    },
  }
}
