import type { Block, Section } from '../../document.ts'
import type { PacketContext } from '../../packet-context.ts'
import { paragraph, titledSection } from '../section.ts'
import { patternBlocks } from './pattern-blocks.ts'
import { repairBlocks } from './repair-blocks.ts'
import { talliesBlocks } from './tallies-blocks.ts'
import { workShareBlocks } from './work-share-blocks.ts'

/** The parts of the assessment in the order in which they are printed; one with nothing to say is left out. */
const parts: readonly ((context: PacketContext) => readonly Block[])[] = [
  talliesBlocks,
  patternBlocks,
  workShareBlocks,
  repairBlocks,
]

/** Assessment: what the findings add up to, each figure with its working. Null where no part has anything to say. */
export function assessmentSection(context: PacketContext): Section | null {
  const blocks = parts.flatMap((part) => part(context))
  if (blocks.length === 0) return null
  return titledSection('assessment', 'Assessment', [paragraph(LIMITS, 'caution'), ...blocks])
}

const LIMITS =
  'Figures in this section follow from the findings, the plan and what people stated, by the working beside them. They are not an opinion on cause or on insurance, and no engineering.'
