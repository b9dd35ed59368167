import { otherTestLabels } from '../../../fieldtest/other-test-labels.ts'
import type { Block } from '../../document.ts'
import { facetLink, photoLink } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { joined, plain } from '../../text.ts'
import { column, heading } from '../section.ts'

/** Moisture, cores, cuts and whatever else was tried, in the tester's words. */
export function otherTestBlocks({ input, facetById, photoById }: PacketContext): readonly Block[] {
  const { others } = input.caseFile.survey
  if (others.length === 0) return []
  return [
    heading('Other tests', true),
    {
      kind: 'table',
      summary: 'Other tests and what they showed',
      columns: [column('Test', 1.2), column('Facet', 0.8), column('What was done and found', 6), column('Photos', 1.2)],
      rows: others.map(({ kind, facetId, text, photoIds }) => {
        const photos = photoIds.flatMap((id) => photoById.get(id) ?? [])
        return {
          cells: [
            plain(otherTestLabels[kind]),
            facetLink(facetId === null ? undefined : facetById.get(facetId)),
            plain(text),
            photos.length === 0 ? plain('none') : joined(photos.map(photoLink)),
          ],
        }
      }),
    },
  ]
}
