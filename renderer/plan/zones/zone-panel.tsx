import { useId } from 'react'
import { areaFigure } from '../../../app/packet/format/areas.ts'
import { type EdgeZones, zonePieces, zoneTotals } from '../../../app/roof/zones/edge-zones.ts'
import type { Zone, ZoneNumber } from '../../../app/roof/zones/edition.ts'
import {
  editionNotes,
  editionWords,
  partWords,
  widthWorking,
  ZONE_CAUTION,
  zoneLabels,
  zoneMeanings,
  zonesInOrder,
} from '../../../app/roof/zones/zone-words.ts'
import { useJob } from '../../state/job-state.tsx'
import { useRoofZones } from '../../state/roof-zones.ts'
import panels from '../plan-panels.module.css'
import { ZoneLacks } from './zone-lacks.tsx'
import { ZonePattern } from './zone-pattern.tsx'
import styles from './zones.module.css'

/** What the zones on the plan are, how wide and why, and what they are not; what is missing where they can't be drawn. */
export function ZonePanel() {
  const zones = useRoofZones()
  return (
    <section className={styles['panel']} aria-label="Edge zones">
      <p className={styles['caution']}>{ZONE_CAUTION}</p>
      {zones.kind === 'drawn' ? <DrawnZones zones={zones} /> : <ZoneLacks zones={zones} />}
    </section>
  )
}

type Drawn = Extract<EdgeZones, { kind: 'drawn' }>

function DrawnZones({ zones }: { zones: Drawn }) {
  const { job } = useJob()
  const { width, edition } = zones
  const totals = zoneTotals(zones)
  const present = zonesInOrder.filter((zone) => totals[zone].planAreaSqFt > 0)
  const refused = zones.facets.flatMap((facet) => (facet.kind === 'refused' ? [facet.sentence] : []))
  return (
    <>
      <ul className={styles['legend']}>
        {present.map((zone) => (
          <li key={zone} title={zoneMeanings[zone]}>
            <Swatch zone={zone} />
            <span>
              {zoneLabels[zone]} <span className={panels['quiet']}>{areaFigure(totals[zone].areaSqFt)} sq ft</span>
            </span>
          </li>
        ))}
        <li>
          <strong>a = {Number(width.widthFt.toFixed(2))} ft</strong> wide, {editionWords(edition)}
        </li>
      </ul>
      {refused.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <details className={styles['working']}>
        <summary>How the width came about, and what the edition says</summary>
        <p>{widthWorking(width, job.sheet.property.leastWidthFt === null ? 'plan' : 'walls')}</p>
        <p className={panels['quiet']}>{width.source}</p>
        <p>
          {editionWords(edition)}: {editionNotes[edition]}
        </p>
        <ZoneNumbers zones={zones} />
      </details>
    </>
  )
}

/** The edition's number of each part as far as it is known, or why there is none. */
function ZoneNumbers({ zones }: { zones: Drawn }) {
  const lines = new Map<string, string>()
  for (const { part, number } of zonePieces(zones)) {
    const words = part === 'field' ? 'the field' : partWords[part]
    lines.set(`${words}: ${numberWords(number)}`, words)
  }
  if (zones.edition === '7-22') return null
  return (
    <ul className={styles['numbers']}>
      {[...lines.keys()].map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

function numberWords(number: ZoneNumber): string {
  return number.kind === 'given' ? `zone ${number.number}` : number.sentence
}

function Swatch({ zone }: { zone: Zone }) {
  const id = useId()
  return (
    <svg className={styles['swatch']} width="30" height="16" aria-hidden="true">
      {zone === 'field' ? null : <ZonePattern id={id} zone={zone} scale={1} />}
      <rect
        className={styles['swatchFrame']}
        x="0.5"
        y="0.5"
        width="29"
        height="15"
        fill={zone === 'field' ? 'none' : `url(#${id})`}
      />
    </svg>
  )
}
