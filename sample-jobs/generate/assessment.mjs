/** What the office states for the assessment of the invented house; everything else in it follows from plan and findings. */

/** @type {any} */
export const ASSESSMENT = {
  rule: 'fl-25-percent',
  workDate: '2026-12-07',
  sections: [
    {
      id: 'section-1',
      name: 'Whole roof',
      facets: ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J', 'K', 'L'],
      permitDate: '2007-08-14',
      permit: 'R-07-0000 (invented)',
    },
  ],
  planned: [
    { facet: 'A', extent: { kind: 'area', areaSqFt: 96 } },
    { facet: 'E', extent: { kind: 'area', areaSqFt: 12 } },
    { facet: 'G', extent: { kind: 'tiles' } },
    { facet: 'H', extent: { kind: 'area', areaSqFt: 20 } },
    { facet: 'L', extent: { kind: 'area', areaSqFt: 64 } },
    ...['B', 'C', 'D', 'F', 'I', 'J', 'K'].map((facet) => ({ facet, extent: { kind: 'none' } })),
  ],
  earlier: [
    {
      id: 'work-1',
      date: '2026-02-20',
      areaSqFt: 48,
      facet: 'A',
      permit: 'B-26-0000 (invented)',
      source: 'The owner’s copy of the permit (invented)',
    },
  ],
  bond: 'straight',
  lockFrom: 'left',
  breakage: { fromPercent: 10, toPercent: 30 },
  stock: [
    {
      id: 'stock-1',
      pieces: null,
      where: 'A salvage yard (invented)',
      by: 'The office, by telephone',
      on: '2026-11-13',
      note: 'About 40 used tiles by the yard’s own word; nobody counted them or held one against the roof.',
    },
  ],
  searches: [
    {
      id: 'search-1',
      by: 'The office',
      where: 'Two salvage yards (invented)',
      on: '2026-11-13',
      answer: 'One has about 40 used tiles that look alike; the other has none.',
    },
  ],
  profile:
    'The two suppliers that were asked (invented) say that this profile is no longer made. Their answers were given by telephone; nothing in writing was received.',
}
