import type { JobSheet } from '../job/sheet.ts'
import { windEditionSchema, type WindEdition } from '../roof/zones/edition.ts'
import { tileMoment, type TileMoment } from './tile-moment.ts'
import { velocityPressure, type VelocityPressure } from './velocity-pressure.ts'
import type { WeatherChoices } from './weather-records.ts'

/** Figures by one edition. */
export interface EditionFigures {
  readonly edition: WindEdition
  readonly pressure: VelocityPressure
  /** Null while the tile or the zone's coefficient is not stated. */
  readonly moment: TileMoment | null
}

/** What wind of a stated speed would do by the formulas of the standard: context, never an assessment of this roof. */
export interface ContextFigures {
  readonly figures: readonly EditionFigures[]
  /** What is not stated and so keeps the pressure from being worked out, as sentences. */
  readonly lacks: readonly string[]
  /** What is not stated and so keeps the moment from being worked out. */
  readonly momentLacks: readonly string[]
}

/** Cautions that stand wherever these figures stand. */
export const contextCautions: readonly string[] = [
  'These figures are context, not engineering. They do not say what the wind was at this roof, nor whether a tile held or should have held; a licensed engineer can speak on that.',
  'A station measures at its own height and surroundings, often miles away. The formulas ask for a 3-second gust at 33 ft in open terrain. No station value is turned into another here.',
  'Formulas and coefficients are restated, some from memory or second hand. Compare them with the printed edition before relying on them. The wind-tunnel work behind the lift coefficient has been questioned in print.',
]

/** Works out pressure and moment as far as sheet and choices state what they need; by all editions while none is stated. */
export function contextFigures(sheet: JobSheet, choices: WeatherChoices): ContextFigures {
  const { meanRoofHeightFt, windEdition } = sheet.property
  const { speedMph, exposure, kzt, kd, elevationFt } = choices
  const momentLacks = momentLacksOf(sheet, choices)
  if (meanRoofHeightFt === null || speedMph === null || exposure === null) {
    return { figures: [], lacks: pressureLacksOf(sheet, choices), momentLacks }
  }
  const editions = windEdition === null ? windEditionSchema.options : [windEdition]
  const figures = editions.map((edition): EditionFigures => {
    const heightFt = meanRoofHeightFt
    const pressure = velocityPressure({ edition, speedMph, exposure, heightFt, kzt, kd, elevationFt })
    return { edition, pressure, moment: momentOf(pressure, sheet, choices) }
  })
  return { figures, lacks: [], momentLacks }
}

function pressureLacksOf({ property }: JobSheet, { speedMph, exposure }: WeatherChoices): readonly string[] {
  return [
    ...(property.meanRoofHeightFt === null ? ['The mean roof height is not on the job sheet.'] : []),
    ...(speedMph === null ? ['No wind speed is chosen.'] : []),
    ...(exposure === null ? ['The exposure of the site (B, C or D) is not chosen.'] : []),
  ]
}

function momentLacksOf({ covering }: JobSheet, { tileLengthFt, gcp }: WeatherChoices): readonly string[] {
  if (covering.class !== 'concrete-tile' && covering.class !== 'clay-tile') {
    return ['The formula is for concrete and clay tile; the sheet does not name such a covering.']
  }
  return [
    ...(covering.coverWidthIn === null ? ['The cover width of a tile is not on the job sheet.'] : []),
    ...(tileLengthFt === null ? ['The length of a tile is not stated.'] : []),
    ...(gcp === null ? ['The roof coefficient GCp of the zone is not stated.'] : []),
  ]
}

function momentOf(pressure: VelocityPressure, sheet: JobSheet, choices: WeatherChoices): TileMoment | null {
  const { coverWidthIn } = sheet.covering
  const { tileLengthFt, gcp, kd, liftCoefficient, armFt } = choices
  if (momentLacksOf(sheet, choices).length > 0) return null
  if (coverWidthIn === null || tileLengthFt === null || gcp === null) return null
  return tileMoment({ pressure, kd, liftCoefficient, exposedWidthFt: coverWidthIn / 12, tileLengthFt, armFt, gcp })
}
