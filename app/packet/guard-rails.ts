/** What a packet is and is not. Printed on the cover and with the statement. */
export const whatThisIs =
  'This is a roofing contractor’s record of the physical condition of a roof and, where a bid is enclosed, of the repair work proposed.'

export const whatThisIsNot =
  'It is not an adjuster’s report, not an engineer’s opinion and not a coverage opinion. The contractor does not read the policy or act on a claim. The owner chooses who receives this record.'

export const howItIsWritten =
  'What was observed, what was measured and what is opinion are set apart. Figures name the findings they come from, findings name their photos, and every photo names its file’s SHA-256.'

/** Limits that every inspection of this kind has. */
export const limitsOfInspection: readonly string[] = [
  'A visual inspection of what could be reached on the dates given, with tiles lifted by hand only where this record says so. Nothing was taken apart unless this record says so.',
  'Areas that were not looked at are named. Nothing is carried over from a slope that was looked at to one that was not.',
  'An opinion on cause is the inspector’s, from what was seen. "Consistent with" does not exclude other causes.',
  'Wind loads, structure and moisture inside the building are outside this record; a licensed engineer can speak on them.',
  'Whether work meets the code is for the building official.',
]

/** Caution for whoever goes up to check. General safety practice; the ladder's 3 ft as in 29 CFR 1926.1053(b)(1). */
export const workAtHeight =
  'Work at height. Whoever goes up to check this record needs fall protection and a ladder that stands firm and reaches at least 3 ft above the edge. Stay off a roof that is wet or in wind, lightning or darkness, and look from a pole, a ladder or a drone instead. Tile breaks under foot and can slide.'
