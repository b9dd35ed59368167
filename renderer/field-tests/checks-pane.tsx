import { tallyByArea } from '../../app/fieldtest/check-tally.ts'
import { looseVerdictWords, looseWorking, SYSTEMATIC_CAUTION } from '../../app/fieldtest/loose-share.ts'
import { minimumWorking } from '../../app/fieldtest/minimum-sample.ts'
import { loosePlot, loosePlotLegend } from '../../app/fieldtest/plots/loose-plot.ts'
import { roofAreaLabels, roofAreas, type RoofArea } from '../../app/fieldtest/roof-area.ts'
import type { HandCheck } from '../../app/fieldtest/survey.ts'
import { tileCounts } from '../../app/fieldtest/tile-counts.ts'
import { useJob } from '../state/job-state.tsx'
import { useRoofZones } from '../state/roof-zones.ts'
import { Button } from '../ui/button.tsx'
import { CheckRow } from './check-row.tsx'
import styles from './field-tests.module.css'
import { newHandCheck } from './new-lines.ts'
import { PlotFigure } from './plot-figure.tsx'
import { ShowWorking } from './show-working.tsx'
import { useSurvey } from './use-survey.ts'

/** Tiles checked by hand, by facet and area, with the share of loose ones and what the sample can say. */
export function ChecksPane() {
  const { survey, save } = useSurvey()
  const { checks } = survey
  const put = (changed: HandCheck) =>
    void save({ checks: checks.map((check) => (check.id === changed.id ? changed : check)) })
  return (
    <>
      {checks.length === 0 ? (
        <p className={styles['quiet']}>
          No tile is counted yet. Add a line for each area of each facet: how many tiles were lifted by hand, and how
          many of them were loose.
        </p>
      ) : (
        <div className={styles['scroll']}>
          <table className={styles['lines']} aria-label="Hand checks">
            <thead>
              <tr>
                {['Facet', 'Area', 'Checked', 'Loose', 'Of which pulled', 'By', 'Photos', 'Note', ''].map((title) => (
                  <th key={title} scope="col">
                    {title === '' ? <span className={styles['quiet']}>Remove</span> : title}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {checks.map((check, i) => (
                <CheckRow
                  key={check.id}
                  check={check}
                  line={i + 1}
                  onChange={put}
                  onRemove={() => void save({ checks: checks.filter(({ id }) => id !== check.id) })}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p>
        <Button look="main" onPress={() => void save({ checks: [...checks, newHandCheck(checks.at(-1))] })}>
          Add a line
        </Button>
      </p>
      <LooseFigures checks={checks} />
    </>
  )
}

function LooseFigures({ checks }: { checks: readonly HandCheck[] }) {
  const { facets, job } = useJob()
  const zones = useRoofZones()
  const tallies = tallyByArea(checks)
  const plot = loosePlot(tallies.map(({ area, share }) => ({ label: areaWords(area), share })))
  if (plot === null) return null
  const { exposureIn, coverWidthIn } = job.sheet.covering
  const piece = exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
  const counts = tileCounts({ facets, zones, piece })
  const checkedIn = (area: RoofArea) => tallies.find((tally) => tally.area === area)?.checked ?? 0
  return (
    <>
      <h2 className={styles['heading']}>Loose share by area</h2>
      <ul>
        {tallies.map(({ area, share }) => (
          <li key={areaWords(area)}>
            {areaWords(area)}: {share.kind === 'share' ? looseVerdictWords[share.verdict] : 'nothing checked'}
          </li>
        ))}
      </ul>
      <PlotFigure plot={plot} legend={loosePlotLegend} />
      <p className={styles['quiet']}>▲ {SYSTEMATIC_CAUTION}</p>
      <h2 className={styles['heading']}>Against the smallest sample</h2>
      {counts.kind === 'lacking' ? (
        <p className={styles['quiet']}>{counts.sentence}</p>
      ) : (
        <ul>
          {roofAreas.map((area) => (
            <li key={area}>
              {roofAreaLabels[area]}:{' '}
              {minimumWorking({ tiles: counts.tiles(null, area), area, checked: checkedIn(area) })}
            </li>
          ))}
        </ul>
      )}
      <ShowWorking lines={tallies.map(({ area, share }) => `${areaWords(area)}: ${looseWorking(share)}`)} />
    </>
  )
}

function areaWords(area: RoofArea | null): string {
  return area === null ? 'Area not stated' : roofAreaLabels[area]
}
