/** How a reader checks a packet, step by step. */
export const verifyingSteps: readonly string[] = [
  'Unpack the evidence bundle into an empty folder.',
  'In that folder run: sha256sum -c manifest.sha256. Every line has to say OK.',
  'Compare a file’s SHA-256 with the one in the custody list of the packet.',
  'Where Battenbook is at hand, run: battenbook verify BUNDLE. It checks all hashes, replays the evidence log from its first entry, compares the PDF with the list, and names the first difference.',
  'Compare the head hash of the log with the one on the packet’s cover. A later revision has a longer log whose earlier entries are the same.',
]

/** The text of HOW-TO-VERIFY.txt in an evidence bundle: plain lines, for people who have only standard tools. */
export function howToVerifyText(told: {
  readonly jobNumber: string
  /** "Revision 2". */
  readonly revisionLabel: string
  readonly headHash: string
  readonly programVersion: string
  /** Videos that are named in the packet but whose files are not in the bundle. */
  readonly videosLeftOut: readonly { readonly label: string; readonly sha256: string }[]
}): string {
  return [
    `HOW TO VERIFY`,
    ``,
    `Job ${told.jobNumber}, ${told.revisionLabel}`,
    `Evidence log, head hash: ${told.headHash}`,
    `Made with Battenbook ${told.programVersion}`,
    ``,
    ...verifyingSteps.map((step, i) => `${i + 1}. ${step}`),
    ``,
    `Without sha256sum:`,
    `  macOS:   shasum -a 256 -c manifest.sha256`,
    `  Windows: certutil -hashfile FILE SHA256, and compare with the line in manifest.sha256`,
    ``,
    ...(told.videosLeftOut.length === 0
      ? []
      : [
          `Not in this bundle, kept by the office that made it:`,
          ...told.videosLeftOut.map(({ label, sha256 }) => `  ${label}  SHA-256 ${sha256}`),
          ``,
        ]),
    `A hash shows that a file has not changed since it was hashed. It does not say who made`,
    `the file, when, or whether what it shows is complete.`,
    ``,
  ].join('\n')
}
