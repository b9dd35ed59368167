import { type JobZones, type ZoneLack } from '../../../app/roof/zones/job-zones.ts'
import { whyNoZones } from '../../../app/roof/zones/zone-words.ts'
import { useGoTo } from '../../frame/use-go-to.ts'
import { Button } from '../../ui/button.tsx'
import panels from '../plan-panels.module.css'

const buttonWords = {
  'property.windEdition': 'Enter the edition',
  'property.meanRoofHeightFt': 'Enter the roof height',
} as const satisfies Record<ZoneLack['field'], string>

/** Why there are no zones, with a way to each field that they lack. */
export function ZoneLacks({ zones }: { zones: JobZones }) {
  const goTo = useGoTo()
  const lacks = zones.kind === 'lacking' ? zones.lacks : []
  return (
    <div className={panels['line']}>
      <span>{whyNoZones(zones)}</span>
      {lacks.map(({ field }) => (
        <Button key={field} onPress={() => goTo({ workspace: 'sheet', target: { kind: 'field', id: field } })}>
          {buttonWords[field]}
        </Button>
      ))}
    </div>
  )
}
