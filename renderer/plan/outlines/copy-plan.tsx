import { planGeoJson } from '../../../app/packet/plan-geojson.ts'
import { drawPlan } from '../../../app/roof/draw-plan.ts'
import { planToSvg } from '../../../app/roof/plan-svg.ts'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { useMessages } from '../../ui/message.tsx'
import panels from '../plan-panels.module.css'

/** Copies the plan for other programs: as a drawing to scale, or as shapes on the earth. */
export function CopyPlan() {
  const snapshot = useJob()
  const { say } = useMessages()
  const { facets, findings, job } = snapshot
  const geo = planGeoJson(snapshot)
  async function copy(text: string, what: string) {
    try {
      await navigator.clipboard.writeText(text)
      say({ tone: 'done', text: `The plan is copied as ${what}.` })
    } catch {
      say({
        tone: 'error',
        text: 'The plan was not copied.',
        help: 'Allow this page to use the clipboard and try again.',
      })
    }
  }
  const svg = () => {
    const { frontAzimuthDeg, doorAt } = job.sheet.property
    return planToSvg(drawPlan({ facets, findings, photos: [], frame: job.frame, frontAzimuthDeg, doorAt }))
  }
  return (
    <>
      <div className={panels['line']}>
        <Button isDisabled={facets.length === 0} onPress={() => void copy(svg(), 'SVG')}>
          Copy as SVG
        </Button>
        <Button isDisabled={geo === null} onPress={() => void copy(`${JSON.stringify(geo, null, 2)}\n`, 'GeoJSON')}>
          Copy as GeoJSON
        </Button>
      </div>
      {geo === null ? <p className={panels['quiet']}>GeoJSON needs the position of the origin, saved above.</p> : null}
    </>
  )
}
