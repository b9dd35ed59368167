/** Printed with every clock, wherever one is shown. */
export const clockCaution =
  'General information, not legal advice. Laws change, policies and dates of issue alter which version applies, and emergency orders extend times. Check the current statute and ask a licensed attorney, a public adjuster or the insurer. The contractor documents physical conditions only.'

/** Which days a count of business days goes by. `jurisdiction`: ISO 3166-2 code, empty where no law stands behind the rule. */
export function businessDaysWords(jurisdiction: string): string {
  const list =
    jurisdiction === ''
      ? 'no holidays are left out'
      : `the public holidays that the holiday list of the npm package date-holidays has for ${jurisdiction} are left out`
  return `Business days are counted here as Monday to Friday; ${list}. The statute, or a court, may define them in another way.`
}
