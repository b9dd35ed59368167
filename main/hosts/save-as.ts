/**
 * The header that offers a file for saving under its own name, whatever the script. RFC 6266 section 4.3, with the name
 * encoded as RFC 8187 section 3.2.1 asks: `encodeURIComponent` leaves four characters alone that stand for themselves in
 * an address but not here.
 */
export function saveAsHeader(fileName: string): string {
  const encoded = encodeURIComponent(fileName).replaceAll(
    /['()*]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  )
  return `attachment; filename*=UTF-8''${encoded}`
}
