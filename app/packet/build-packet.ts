import type { PacketDocument, Section } from './document.ts'
import { makeContext, type PacketContext } from './packet-context.ts'
import type { PacketInput } from './packet-input.ts'
import { assessmentSection } from './sections/assessment/assessment-section.ts'
import { contentsSection } from './sections/contents.ts'
import { coverSection } from './sections/cover.ts'
import { custodySection } from './sections/custody.ts'
import { evidenceLogSection } from './sections/evidence-log.ts'
import { explanatoryNotesSection } from './sections/explanatory-notes.ts'
import { fieldTestsSection } from './sections/field-tests.ts'
import { findingsSection } from './sections/findings.ts'
import { photosSection } from './sections/photos.ts'
import { propertyAndRoofSection } from './sections/property-and-roof.ts'
import { roofPlanSection } from './sections/roof-plan.ts'
import { scopeAndCostSection } from './sections/scope-and-cost.ts'
import { statementSection } from './sections/statement.ts'
import { summarySection } from './sections/summary.ts'
import { weatherSection } from './sections/weather.ts'

/** Sections in the order in which they are printed; one with nothing to say leaves itself out. */
const sections: readonly ((context: PacketContext) => Section | null)[] = [
  coverSection,
  summarySection,
  contentsSection,
  propertyAndRoofSection,
  roofPlanSection,
  findingsSection,
  fieldTestsSection,
  weatherSection,
  assessmentSection,
  scopeAndCostSection,
  explanatoryNotesSection,
  photosSection,
  evidenceLogSection,
  custodySection,
  statementSection,
]

/** Builds the whole packet from a case file and its evidence log. Pure: the same input gives the same document. */
export function buildPacket(input: PacketInput): PacketDocument {
  const context = makeContext(input)
  const { job } = input.caseFile
  const { address, city } = job.sheet.property
  const place = [address, city].filter((part) => part.trim() !== '').join(', ')
  return {
    paper: input.options.paper,
    title: `Roof condition record${place === '' ? '' : `, ${place}`}`,
    jobLabel: `Job ${job.number}`,
    revisionLabel: context.revisionLabel,
    author: job.sheet.contractor.name.trim() || input.operator,
    createdAtMs: input.issuedAtMs,
    watermark: input.revision === null ? 'DRAFT' : null,
    sections: sections.flatMap((make) => make(context) ?? []),
  }
}
