import { RepairPanel } from './repair-panel.tsx'
import { WorkSharePanel } from './work-share-panel.tsx'

/** Tallies, pattern, share of work and repair. */
export function AssessmentWorkspace() {
  return (
    <div style={{ height: '100%', overflow: 'auto', position: 'relative', padding: 16 }}>
      <WorkSharePanel />
      <RepairPanel />
    </div>
  )
}
