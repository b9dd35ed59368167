import { roofAreaLabels, roofAreas, type RoofArea } from './roof-area.ts'
import {
  outcomeSchema,
  pullDirectionSchema,
  pullPointSchema,
  type Outcome,
  type PullDirection,
  type PullPoint,
} from './reading.ts'
import { outcomeLabels, pullDirectionLabels, pullPointLabels } from './reading-words.ts'

/** The area that a cell names, `null` for an empty one, `undefined` for words that name none. */
export function areaCell(cell: string): RoofArea | null | undefined {
  const word = cell.toLowerCase()
  if (word === '') return null
  if (word === 'perimeter') return 'edge'
  if (word === 'hip') return 'ridge'
  return roofAreas.find((area) => area === word || roofAreaLabels[area].toLowerCase() === word)
}

/** How it was pulled: "gauge" or "by hand"; `null` for an empty cell. */
export function methodCell(cell: string): 'gauge' | 'by-hand' | null | undefined {
  const word = cell.toLowerCase().replaceAll('-', ' ')
  if (word === '') return null
  if (word === 'gauge' || word === 'scale') return 'gauge'
  return word === 'by hand' || word === 'hand' ? 'by-hand' : undefined
}

/** The point of pull that a cell names. */
export function pullPointCell(cell: string): PullPoint | undefined {
  return named(cell, pullPointSchema.options, pullPointLabels)
}

/** The direction of pull that a cell names. */
export function pullDirectionCell(cell: string): PullDirection | undefined {
  return named(cell, pullDirectionSchema.options, pullDirectionLabels)
}

/** The outcome that a cell names. */
export function outcomeCell(cell: string): Outcome | undefined {
  return named(cell, outcomeSchema.options, outcomeLabels)
}

/** "2026-11-12 10:40" or with a T, seconds dropped; `null` for an empty cell. */
export function timeCell(cell: string): string | null | undefined {
  if (cell === '') return null
  const match = /^(\d{4}-\d{2}-\d{2})[T ](\d{1,2}):(\d{2})(?::\d{2})?$/.exec(cell)
  if (match === null) return undefined
  const [, day = '', hour = '', minute = ''] = match
  if (Number(hour) > 23 || Number(minute) > 59) return undefined
  return `${day}T${hour.padStart(2, '0')}:${minute}`
}

function named<Key extends string>(
  cell: string,
  keys: readonly (Key | 'not-stated')[],
  labels: Readonly<Record<Key | 'not-stated', string>>,
): Key | 'not-stated' | undefined {
  const word = cell.toLowerCase()
  if (word === '') return 'not-stated'
  return keys.find((key) => key === word || labels[key] === word)
}
