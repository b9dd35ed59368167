import { screen } from '../../renderer/plan/screen.ts'

export const roofScreen = screen
