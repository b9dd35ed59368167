import type { Workspace } from './addresses.ts'
import { screenPart } from './screen-part.tsx'

/** What each workspace shows, fetched when it is first opened or ahead of that. */
export const panes = {
  sheet: screenPart(async () => (await import('../sheet/sheet-workspace.tsx')).SheetWorkspace),
  plan: screenPart(async () => (await import('../plan/plan-workspace.tsx')).PlanWorkspace),
  photos: screenPart(async () => (await import('../photos/photos-workspace.tsx')).PhotosWorkspace),
  video: screenPart(async () => (await import('../video/video-workspace.tsx')).VideoWorkspace),
  narration: screenPart(async () => (await import('../narration/narration-workspace.tsx')).NarrationWorkspace),
  findings: screenPart(async () => (await import('../findings/findings-workspace.tsx')).FindingsWorkspace),
  'field-tests': screenPart(async () => (await import('../field-tests/field-tests-workspace.tsx')).FieldTestsWorkspace),
  weather: screenPart(async () => (await import('../weather/weather-workspace.tsx')).WeatherWorkspace),
  assessment: screenPart(async () => (await import('../assessment/assessment-workspace.tsx')).AssessmentWorkspace),
  scope: screenPart(async () => (await import('../scope/scope-workspace.tsx')).ScopeWorkspace),
  packet: screenPart(async () => (await import('../packet/packet-workspace.tsx')).PacketWorkspace),
  diary: screenPart(async () => (await import('../diary/diary-workspace.tsx')).DiaryWorkspace),
  log: screenPart(async () => (await import('../log/log-workspace.tsx')).LogWorkspace),
} as const satisfies Record<Workspace, unknown>
