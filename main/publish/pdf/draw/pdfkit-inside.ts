/**
 * The few things inside pdfkit that its public interface does not offer and a packet needs: glyphs placed one by one,
 * page labels, name trees in the order that the standard asks for, and images that are opened before they are drawn.
 * Everything here is checked when a document opens, so that another version of pdfkit fails at once and by name.
 */
export interface PdfkitInside {
  /** The document catalogue's dictionary. */
  readonly catalogue: Record<string, unknown>
  /** The named destinations; names are compared by this. */
  readonly destinations: { _compareKeys: (a: string, b: string) => number }
  /** Whether a font is registered under a name. */
  readonly hasFont: (name: string) => boolean
  /** The font last chosen with `font()`. */
  readonly currentFont: () => EmbeddedFont
  readonly openImage: (jpeg: Uint8Array) => OpenedImage
  readonly drawImage: (
    image: OpenedImage,
    box: { readonly xPt: number; readonly yPt: number; readonly widthPt: number; readonly heightPt: number },
  ) => void
}

/** A font as pdfkit embeds it: the subset of glyphs used, their widths and the text they stand for. */
export interface EmbeddedFont {
  readonly id: string
  readonly ref: () => object
  /** Glyphs of the original font by their codes in the PDF; a glyph may have several. */
  readonly subset: { readonly glyphs: number[] }
  readonly widths: number[]
  readonly unicode: (readonly number[])[]
}

/** A JPEG that pdfkit has read the head of. */
export interface OpenedImage {
  readonly width: number
  readonly height: number
  /** As in EXIF, 1 to 8; above 4 width and height change places. */
  readonly orientation: number
  readonly colorSpace: string
}

/** Reaches into a document. Throws when pdfkit is not built as expected. */
export function pdfkitInside(pdf: PDFKit.PDFDocument): PdfkitInside {
  const known = insides.get(pdf)
  if (known !== undefined) return known
  if (!isAsExpected(pdf)) throw new Error('This version of pdfkit is built differently: the publisher needs 0.20.')
  const inside: PdfkitInside = {
    catalogue: pdf._root.data,
    destinations: pdf._root.data.Names.data.Dests,
    hasFont: (name) => Object.hasOwn(pdf._registeredFonts, name),
    currentFont: () => pdf._font,
    openImage: (jpeg) => pdf.openImage(jpeg),
    drawImage: (image, box) => {
      pdf.image(image, { x: box.xPt, y: box.yPt, width: box.widthPt, height: box.heightPt })
    },
  }
  insides.set(pdf, inside)
  return inside
}

const insides = new WeakMap<object, PdfkitInside>()

/** A PDF text string. pdfkit writes plain strings as names, and String objects as strings. */
export function pdfString(text: string): string {
  const boxed: unknown = new String(text)
  return boxed as string
}

interface Expected {
  readonly _root: {
    readonly data: Record<string, unknown> & {
      readonly Names: { readonly data: { readonly Dests: { _compareKeys: (a: string, b: string) => number } } }
    }
  }
  readonly _font: EmbeddedFont
  readonly _registeredFonts: object
  readonly openImage: (jpeg: Uint8Array) => OpenedImage
  readonly image: (image: OpenedImage, options: { x: number; y: number; width: number; height: number }) => unknown
}

function isAsExpected(pdf: object): pdf is Expected {
  const names = reach(pdf, ['_root', 'data', 'Names', 'data', 'Dests', '_compareKeys'])
  return (
    typeof names === 'function' &&
    typeof reach(pdf, ['_registeredFonts']) === 'object' &&
    '_font' in pdf &&
    typeof reach(pdf, ['openImage']) === 'function' &&
    typeof reach(pdf, ['image']) === 'function'
  )
}

function reach(from: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? Reflect.get(at, key) : undefined),
    from,
  )
}
