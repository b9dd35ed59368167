/** The scheme under which the window loads its pages and the library's files. */
export const SCHEME = 'battenbook'

/** The one origin of that scheme. */
export const pageOrigin = `${SCHEME}://app`
