import { tallyByArea, tallyByFacet, type CheckTally } from '../../../fieldtest/check-tally.ts'
import { protocolSampling } from '../../../fieldtest/criteria/florida-field-protocol.ts'
import { looseVerdictWords, looseWorking, percent, range, SYSTEMATIC_CAUTION } from '../../../fieldtest/loose-share.ts'
import { minimumSample, minimumWorking } from '../../../fieldtest/minimum-sample.ts'
import { loosePlot, loosePlotLegend } from '../../../fieldtest/plots/loose-plot.ts'
import { roofAreaLabels, type RoofArea } from '../../../fieldtest/roof-area.ts'
import { tileCounts, type TileCounts } from '../../../fieldtest/tile-counts.ts'
import type { Block, TableBlock, Text } from '../../document.ts'
import { facetLink } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { plain } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** Tiles checked by hand: by area with intervals against 3 %, against the smallest sample, and by facet. */
export function handCheckBlocks(context: PacketContext): readonly Block[] {
  const { checks } = context.input.caseFile.survey
  if (checks.length === 0) return []
  const byArea = tallyByArea(checks)
  const counts = countsOf(context)
  const plot = loosePlot(byArea.map(({ area, share }) => ({ label: areaWords(area), share })))
  return [
    heading('Tiles checked by hand', true),
    paragraph(
      'Each tile counted was lifted by hand. Areas stand by themselves: a total over the roof would hide a loose edge in a sound field.',
    ),
    areaTable(byArea),
    ...byArea.map((tally) => paragraph(`${areaWords(tally.area)}: ${looseWorking(tally.share)}`, 'small')),
    ...(plot === null
      ? []
      : [
          {
            kind: 'group',
            blocks: [
              { kind: 'heading', level: 3, text: 'Loose share by area', inOutline: false },
              { kind: 'plot', plot },
              paragraph(loosePlotLegend, 'small'),
            ],
          } as const satisfies Block,
        ]),
    paragraph(SYSTEMATIC_CAUTION, 'caution'),
    ...sampleBlocks(byArea, counts),
    heading('Checked tiles by facet'),
    facetTable(tallyByFacet(checks), context, counts),
  ]
}

function countsOf({ facets, sheet, zones }: PacketContext): TileCounts {
  const { exposureIn, coverWidthIn } = sheet.covering
  const piece = exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
  return tileCounts({ facets, zones, piece })
}

function areaTable(tallies: readonly CheckTally[]): TableBlock {
  return {
    kind: 'table',
    summary: 'Loose tiles of those checked, by area, with intervals against 3 %',
    columns: [
      column('Area', 1.6),
      column('Checked', 1, 'end'),
      column('Loose', 0.9, 'end'),
      column('Pulled', 0.9, 'end'),
      column('Loose, %', 1, 'end'),
      column('Wilson 95 %', 1.8),
      column('Exact 95 %', 1.8),
      column('Against 3 %', 2.6),
    ],
    rows: tallies.map(({ area, checked, loose, tested, share }) => ({
      cells: [
        plain(areaWords(area)),
        plain(String(checked)),
        plain(String(loose)),
        plain(String(tested)),
        ...(share.kind === 'none-checked'
          ? [plain('-'), plain('-'), plain('-'), plain('nothing checked')]
          : [
              plain(percent(share.share)),
              plain(range(share.wilson)),
              plain(range(share.exact)),
              plain(looseVerdictWords[share.verdict]),
            ]),
      ],
    })),
  }
}

function sampleBlocks(tallies: readonly CheckTally[], counts: TileCounts): readonly Block[] {
  const title = heading('Against the smallest sample')
  if (counts.kind === 'lacking') return [title, paragraph(`Not worked out. ${counts.sentence}`, 'small')]
  const { oneIn, source } = protocolSampling
  return [
    title,
    paragraph(
      `One tile in ${oneIn.field} in the field, one in ${oneIn.edge} at edges, corners, ridges and hips, up to whole tiles [${source}]; used as a yardstick. Tiles on the plan: sloped area / (exposure × cover width).`,
      'small',
    ),
    {
      kind: 'list',
      items: sampled.map((area) => {
        const checked = tallies.find((tally) => tally.area === area)?.checked ?? 0
        return plain(`${areaWords(area)}: ${minimumWorking({ tiles: counts.tiles(null, area), area, checked })}`)
      }),
    },
  ]
}

const sampled: readonly RoofArea[] = ['field', 'edge', 'corner', 'ridge']

function facetTable(tallies: readonly CheckTally[], context: PacketContext, counts: TileCounts): TableBlock {
  const hasCounts = counts.kind === 'counted'
  const leastCell = ({ facetId, area }: CheckTally): readonly Text[] => {
    if (!hasCounts) return []
    if (facetId === null || area === null) return [plain('-')]
    const tiles = counts.tiles(facetId, area)
    return [plain(`${minimumSample(tiles, area)} of ${tiles}`)]
  }
  return {
    kind: 'table',
    summary: 'Checked and loose tiles by facet and area',
    columns: [
      column('Facet', 1),
      column('Area', 1.6),
      column('Checked', 1, 'end'),
      column('Loose', 1, 'end'),
      ...(hasCounts ? [column('Smallest sample', 1.6, 'end')] : []),
      column('Loose, % (exact 95 %)', 3),
    ],
    rows: tallies.map((tally) => ({
      cells: [
        facetLink(tally.facetId === null ? undefined : context.facetById.get(tally.facetId)),
        plain(areaWords(tally.area)),
        plain(String(tally.checked)),
        plain(String(tally.loose)),
        ...leastCell(tally),
        plain(
          tally.share.kind === 'share'
            ? `${percent(tally.share.share)} (${range(tally.share.exact)})`
            : 'nothing checked',
        ),
      ],
    })),
  }
}

function areaWords(area: RoofArea | null): string {
  return area === null ? 'Area not stated' : roofAreaLabels[area]
}
