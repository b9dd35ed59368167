import type { StructureStep } from '../measure/strip.ts'

type Element = PDFKit.PDFStructureElement

interface ElementOptions {
  readonly alt?: string
  readonly bbox?: [number, number, number, number]
  readonly scope?: 'Column' | 'Row'
}

/** Keeps the logical structure (ISO 32000-1, 14.7) in step with what is drawn. */
export interface Tags {
  /** Opens the elements of a path, closing what it does not share with the one before. */
  readonly enter: (path: readonly StructureStep[]) => void
  /** Draws inside an element of its own below the one that is open. */
  readonly inside: (tag: string, options: ElementOptions, draw: (element: Element) => void) => void
  /** Draws content of the element that is open. */
  readonly content: (draw: () => void) => void
  /** Draws something that is not content: rules, running headers, a table's head drawn again. */
  readonly artifact: (type: 'Pagination' | 'Layout', draw: () => void) => void
  readonly close: () => void
}

interface Open {
  readonly id: number | null
  readonly tag: string
  readonly element: Element
}

/** Structure of a new document, with its `Document` element open. */
export function tagsFor(pdf: PDFKit.PDFDocument): Tags {
  const document: Open = { id: null, tag: 'Document', element: pdf.struct('Document') }
  pdf.addStructure(document.element)
  const open: Open[] = [document]
  const top = (): Open => open.at(-1) ?? document
  const push = (id: number | null, tag: string, options: ElementOptions) => {
    const element = pdf.struct(tag, options)
    top().element.add(element)
    open.push({ id, tag, element })
  }
  const pop = () => open.pop()?.element.end()
  // Inside an artifact nothing is content, whatever draws it.
  let artifacts = 0
  return {
    enter: (path) => {
      const shared = path.findIndex((step, i) => open[i + 1]?.id !== step.id)
      const kept = shared === -1 ? path.length : shared
      while (open.length > kept + 1) pop()
      for (const { id, tag, alt } of path.slice(kept)) push(id, tag, alt === undefined ? {} : { alt })
    },
    inside: (tag, options, draw) => {
      if (artifacts > 0) return draw(top().element)
      push(null, tag, options)
      draw(top().element)
      pop()
    },
    content: (draw) => {
      if (artifacts > 0) return draw()
      const content = pdf.markStructureContent(top().tag)
      top().element.add(content)
      draw()
      pdf.endMarkedContent()
    },
    artifact: (type, draw) => {
      if (artifacts === 0) pdf.markContent('Artifact', { type })
      artifacts += 1
      draw()
      artifacts -= 1
      if (artifacts === 0) pdf.endMarkedContent()
    },
    close: () => {
      while (open.length > 0) pop()
    },
  }
}
