import type { Camera, ClockComparison } from '../../app/evidence/camera.ts'

/** What the fields of each way of comparing get, and give. */
export interface ComparisonFields {
  readonly camera: Camera
  /** Told at every change: the comparison as it stands, or null while something is missing. */
  readonly onComparison: (comparison: ClockComparison | null) => void
}
