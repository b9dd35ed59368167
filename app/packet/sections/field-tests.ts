import { chosenCriterion, isAgencyTest } from '../../fieldtest/criteria/criteria.ts'
import type { Block, Section } from '../document.ts'
import type { PacketContext } from '../packet-context.ts'
import { heading, titledSection } from './section.ts'
import { backgroundBlocks, criterionBlocks } from './field/criterion-blocks.ts'
import { handCheckBlocks } from './field/hand-check-blocks.ts'
import { otherTestBlocks } from './field/other-test-blocks.ts'
import { readingBlocks } from './field/reading-blocks.ts'
import { squareBlocks } from './field/square-blocks.ts'

/**
 * Field tests: what readings are held against and where that comes from, the readings with their working, tiles checked by
 * hand, test squares and other tests, and what none of them can show. Null where nothing was tested.
 */
export function fieldTestsSection(context: PacketContext): Section | null {
  const { readings } = context
  const { survey } = context.input.caseFile
  const { checks, squares, others } = survey
  if (readings.length + checks.length + squares.length + others.length === 0) return null
  const criterion = chosenCriterion(survey)
  return titledSection('field-tests', 'Field tests', [
    ...(readings.length === 0 ? [] : [...criterionBlocks(criterion, survey), ...readingBlocks(context, criterion)]),
    ...handCheckBlocks(context),
    ...squareBlocks(context),
    ...otherTestBlocks(context),
    ...limits(isAgencyTest(survey)),
  ])
}

function limits(isAgency: boolean): readonly Block[] {
  return [heading('What these tests do not show'), backgroundBlocks(isAgency)]
}
