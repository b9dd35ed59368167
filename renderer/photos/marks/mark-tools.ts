import type { MarkKind } from '../../../app/evidence/markup.ts'

/** What the pointer does on the picture: pick marks, or draw one of a kind. */
export type MarkTool = 'pick' | MarkKind

interface ToolWords {
  readonly label: string
  readonly key: string
  /** How to use it, in one sentence. */
  readonly how: string
}

/** The tools in the order of the bar, each with its key. */
export const markTools = {
  pick: { label: 'Pick', key: 'V', how: 'Click a mark to move, change or remove it. Tab goes from mark to mark.' },
  arrow: { label: 'Arrow', key: 'A', how: 'Drag towards the thing to point at.' },
  ellipse: { label: 'Ellipse', key: 'E', how: 'Drag from one corner of the thing to the other.' },
  freehand: { label: 'Freehand', key: 'D', how: 'Draw with the pointer held down.' },
  text: { label: 'Text', key: 'T', how: 'Click where the words begin, then type them.' },
  scale: {
    label: 'Known length',
    key: 'K',
    how: 'Drag along a thing of known length, such as a rule, then type its length.',
  },
  measure: { label: 'Measure', key: 'L', how: 'Drag along what is to be measured, in the plane of the known length.' },
  obscured: {
    label: 'Obscure',
    key: 'O',
    how: 'Drag over a face or a number plate. Copies given out hide it for good.',
  },
} as const satisfies Record<MarkTool, ToolWords>

/** The tools by name, in the order of the bar. */
export const toolOrder = [
  'pick',
  'arrow',
  'ellipse',
  'freehand',
  'text',
  'scale',
  'measure',
  'obscured',
] as const satisfies readonly MarkTool[]
