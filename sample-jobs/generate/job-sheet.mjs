/** What the office knows of the invented house, people, storm and roof. Nobody and nothing here is real. */
import { ANCHOR, EAVE_HEIGHT_FT, FRONT_AZIMUTH_DEG, PITCH_RISE } from './house-plan.mjs'
import { INSPECTION_DATE } from './walk.mjs'
import { COVER_IN, EXPOSURE_IN, HEADLAP_IN } from './tile-shape.mjs'

/** Half the height of the main ridge above the eave. */
const MEAN_RISE_FT = (17 * PITCH_RISE) / 12 / 2

export const SHEET = {
  property: {
    address: '14 Saltwort Lane (invented)',
    city: 'Heron Spit (invented)',
    region: 'Florida',
    postalCode: '',
    position: ANCHOR,
    timeZone: 'America/New_York',
    frontAzimuthDeg: FRONT_AZIMUTH_DEG,
    storeys: 1,
    meanRoofHeightFt: Math.round((EAVE_HEIGHT_FT + MEAN_RISE_FT) * 10) / 10,
    windEdition: '7-16',
  },
  owner: { name: 'Odile Brannigan-Sorel (invented)', phone: '', email: 'owner@example.com' },
  insurance: {
    insurer: 'Pelican Reach Mutual (invented)',
    policyNumber: 'PRM-HO-0048812',
    claimNumber: 'PRM-26-11-00371',
  },
  loss: {
    date: '2026-11-04',
    cause: 'wind',
    description:
      'The owner reports strong wind from the south to south-west during the night of 4 November 2026, when an invented storm named Ysolde passed the coast, and tile pieces on the lawn left of the house the next morning. The inspector was not present and did not see the pieces.',
  },
  inspection: {
    dates: [INSPECTION_DATE],
    method: ['from-ground', 'from-ladder', 'walked'],
    weather:
      'Dry, sunny with thin cloud, 64 to 71 F, light north-east wind. Tiles dry except on facet J and the lowest courses of facet H.',
    inspector: 'Teodor Wrenfield (invented)',
    inspectorLicence: 'sample licence RC-000000, not a real one',
    marksOnArrival:
      'Three chalk rings on facet A above the entry wing, one with a tick inside. Not made during this inspection; who made them is not known. No tarp on the roof.',
    overallOpinion:
      'In my opinion the field of the roof is in fair order for its age. The observations gather on the main ridge, the hip between the front and the left side, and facets A and L. On those two facets, missing, slipped and loose pieces lie near the hip and ridge, which is consistent with wind and also consistent with caps that were held by old mortar alone. Broken corners on facet H follow the way between the vents and are consistent with foot traffic. Cracked mortar at the two pipes on facet H and along the garage ridge has dark growth in the cracks and is consistent with age. Facets D and I showed nothing to report, and the mortar at the pipe on facet G is sound. Facet J was seen from the ladder only. What brought each item about is not determined by this survey unless the finding says so, and a date cannot be read from the tiles alone.',
  },
  covering: {
    class: 'concrete-tile',
    profile: 'Low wave, two rolls to a tile, side lock at the right',
    colour: 'Brown blend with grey, weathered',
    exposureIn: EXPOSURE_IN,
    coverWidthIn: COVER_IN,
    headlapIn: HEADLAP_IN,
    wastePercent: 12,
    installedYear: 2004,
    fastening:
      'One screw a tile where heads could be seen, through one of two holes near the head. Not opened elsewhere.',
    underlayment:
      'Mineral-faced sheet, one layer in view where two tiles are missing. The layer below was not looked at.',
    deck: 'Not seen.',
    stockNote:
      "Profile no longer made according to the owner's supplier. Two salvage yards asked by telephone on 13 November 2026 by the contractor's office: one had about 40 used tiles that may lock with these, not yet compared; the other had none.",
  },
  permits: [
    { date: '2004-06-17', reference: 'HS-04-0219 (invented)', description: 'New house with concrete tile roof.' },
    {
      date: '2017-10-30',
      reference: 'HS-17-1140 (invented)',
      description: 'Roof repair, tiles replaced on the front slope.',
    },
  ],
  priorRepairs: [
    {
      date: '2017-11-06',
      reference: "owner's invoice, not seen",
      description:
        "Nine tiles replaced on the front slope below the ridge, by the owner's account after a fallen branch.",
    },
    {
      date: null,
      reference: '',
      description: 'Owner recalls that a satellite dish was taken off the back slope some years ago; no date.',
    },
  ],
  contractor: {
    name: 'Slackwater Roof Works (invented)',
    licence: 'sample licence CC-000000, not a real one',
    address: '2 Boatyard Row, Heron Spit (invented)',
    phone: '',
    email: 'office@example.com',
  },
  contacts: [
    { role: 'adjuster', name: 'Marguerite Oakhollow (invented)', phone: '', email: 'adjuster@example.com' },
    { role: 'neighbour', name: 'Piers Lanterman (invented)', phone: '', email: 'neighbour@example.com' },
  ],
  notes:
    'SAMPLE. House, people, companies, storm, cameras, numbers and addresses are invented; the pictures are rendered. The coordinates lie in open tidal marsh.',
}
