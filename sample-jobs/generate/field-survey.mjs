/** Tiles counted by hand and in test squares on the walk. Facet L has no count: there the inspector counted nothing. */
const BY = 'Teodor Wrenfield (invented)'

/** @type {any} */
export const SURVEY = {
  instruments: [
    {
      id: 'gauge-3',
      name: 'Spring gauge no. 3',
      serial: '',
      certificate: 'dial, 0 to 50 lbf; checked 2 November 2026 against a 20 lb weight, no certificate',
    },
  ],
  checks: [
    {
      id: 'check-1',
      facet: 'A',
      area: 'field',
      checked: 64,
      loose: 1,
      tested: 3,
      by: BY,
      note: 'Every fourth tile of every second course. The loose one is that of R-1.',
    },
    { id: 'check-2', facet: 'A', area: 'edge', checked: 22, loose: 0, by: BY, note: 'Third course above the eave.' },
    {
      id: 'check-3',
      facet: 'A',
      area: 'ridge',
      checked: 24,
      loose: 1,
      tested: 1,
      by: BY,
      note: 'The loose one is that of R-3.',
    },
    { id: 'check-7', facet: 'D', area: 'ridge', checked: 18, loose: 0, by: BY },
    { id: 'check-4', facet: 'D', area: 'edge', checked: 12, loose: 0, tested: 1, by: BY },
    { id: 'check-5', facet: 'H', area: 'field', checked: 60, loose: 0, by: BY, note: 'Dry courses only.' },
    { id: 'check-6', facet: 'H', area: 'ridge', checked: 14, loose: 0, by: BY },
  ],
  squares: [
    { id: 'square-1', facet: 'A', counts: [{ condition: 'lifts-by-hand', count: 2 }], note: 'Right part, beside F-7.' },
    { id: 'square-2', facet: 'A', counts: [{ condition: 'lifts-by-hand', count: 0 }] },
    {
      id: 'square-3',
      facet: 'H',
      counts: [{ condition: 'corner-break', count: 3 }],
      note: 'Between the two vents, at F-15.',
    },
    { id: 'square-4', facet: 'H', counts: [{ condition: 'corner-break', count: 0 }] },
  ],
  others: [
    {
      id: 'other-1',
      kind: 'other',
      facet: 'L',
      text: 'Hip caps below those of F-12 tapped with a knuckle: several sound hollow. They were not lifted.',
    },
  ],
}
