import { useMemo } from 'react'
import { zonePieces } from '../../../app/roof/zones/edge-zones.ts'
import { useRoofZones } from '../../state/roof-zones.ts'
import type { PlanScene } from '../plan-canvas.tsx'

/** The scene with the roof's edge zones in its drawing, where they are asked for and can be drawn. */
export function useZonedScene(scene: PlanScene, showsZones: boolean): PlanScene {
  const zones = useRoofZones()
  return useMemo(
    () =>
      showsZones && zones.kind === 'drawn'
        ? { ...scene, drawing: { ...scene.drawing, zones: zonePieces(zones) } }
        : scene,
    [scene, zones, showsZones],
  )
}
