import type { CauseKey } from './keys.ts'

/** What a person may think brought a condition about: a label for lists and the words a packet prints. */
export const causes = {
  undetermined: { label: 'Undetermined', opinion: 'Cause not determined by this survey.' },
  'not-stated': { label: 'Not stated', opinion: 'No opinion on cause is given.' },
  wind: { label: 'Wind', opinion: 'Consistent with wind.' },
  'wind-borne-debris': { label: 'Wind-borne debris', opinion: 'Consistent with a strike by wind-borne debris.' },
  hail: { label: 'Hail', opinion: 'Consistent with hail.' },
  'foot-traffic': { label: 'Foot traffic', opinion: 'Consistent with foot traffic.' },
  installation: { label: 'Installation', opinion: 'Consistent with the way it was installed.' },
  'age-and-weather': { label: 'Age and weather', opinion: 'Consistent with age and ordinary weather.' },
  corrosion: { label: 'Corrosion', opinion: 'Consistent with corrosion.' },
  'thermal-movement': { label: 'Movement with heat and cold', opinion: 'Consistent with movement from heat and cold.' },
  'building-movement': { label: 'Movement of the building', opinion: 'Consistent with movement of the building.' },
  manufacture: { label: 'Manufacture', opinion: 'Consistent with a flaw from manufacture.' },
  'earlier-repair': { label: 'Earlier repair', opinion: 'Consistent with an earlier repair.' },
  'mechanical-impact': { label: 'Blow or fallen object', opinion: 'Consistent with a blow or a fallen object.' },
  animals: { label: 'Animals', opinion: 'Consistent with animals.' },
  'test-itself': { label: 'The test itself', opinion: 'Consistent with the lifting or testing itself.' },
  other: { label: 'Other', opinion: 'Another cause, named in the note.' },
} as const satisfies Record<CauseKey, { readonly label: string; readonly opinion: string }>
