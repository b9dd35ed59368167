/** What the invented inspector says on the walk: a subtitle file whose times are those of the pictures. */
import { mkdir, writeFile } from 'node:fs/promises'
import { dirname } from 'node:path'

/** The recorder is started here, at the ladder. */
export const RECORDED_FROM = '2026-11-12T09:54:00-05:00'
export const NARRATION_FILE = 'walk.vtt'

const STARTED_S = secondsOf('09:54:00')

/** Time of day, and what is said then. @type {readonly (readonly [string, string])[]} */
const SPOKEN = [
  ['09:54:06', 'Okay, recorder is on. Ladder is tied off, roof is dry, hardly any wind.'],
  ['09:56:20', 'Coming up over the garage, on the left side of the garage wing.'],
  ['09:56:36', 'One tile is cracked right across into two pieces, both still in place.'],
  ['09:59:12', 'The crack is fourteen inches long by the scale.'],
  ['10:02:08', 'The mortar along the garage ridge is cracked open, fourteen feet of it.'],
  ['10:02:20', 'Dark growth sits in there, so my guess is that it is old.'],
  ['10:05:42', 'There is a palm leaf lying across the valley.'],
  ['10:06:58', 'Now I am on the front slope of the main house.'],
  ['10:07:10', 'Six ridge caps in a row are off their bed and turned. They rock when I push with one hand.'],
  ['10:12:00', 'The gap under the worst one is an inch and an eighth.'],
  ['10:14:30', 'Down from the ridge there is an old repair, nine tiles, redder than the rest. They lie tight.'],
  ['10:17:00', 'Two tiles here are cracked up to the fastener hole.'],
  ['10:18:14', 'I measure thirteen and a half inches long on the first.'],
  ['10:22:20', 'Get a picture of the gauge with the tile, please.'],
  ['10:22:32', 'This tile lifts two and three quarter inches at twenty four pounds on the gauge.'],
  ['10:23:30', 'I am not going to test them all, these are examples.'],
  ['10:27:04', 'Somebody left three chalk rings here before us.'],
  ['10:29:44', 'Two tiles are missing here, right beside each other.'],
  ['10:30:50', 'The underlayment is exposed in the gap, two and a quarter square feet, no tear in it.'],
  ['10:36:40', 'Over on the right side of the entry wing, the tiles are tight, nothing loose.'],
  ['10:39:20', 'On the left side of the house now. At least three hip tiles are off their bed.'],
  ['10:40:36', 'I would say the wind got under these, but that is only my opinion.'],
  ['10:42:40', 'Several tiles on this side lift by hand.'],
  ['10:44:28', 'There are two, no, make that three slipped tiles.'],
  ['10:45:44', 'The largest has slipped four and a quarter inches.'],
  ['10:49:00', 'Hold on, mind the hose down there.'],
  ['10:52:50', 'Okay, around to the back of the house.'],
  ['10:53:00', 'About five tiles have the lower corner broken off.'],
  ['10:57:54', 'The mortar at both of these pipes is cracked through.'],
  ['10:59:02', 'It stands off a quarter inch.'],
  ['11:05:40', 'No cracks over on this end.'],
  ['11:12:30', 'The end of the rear wing is too wet to walk, I can not get onto that slope.'],
  ['11:17:10', 'Last one, the right side of the house.'],
  ['11:17:20', 'Three tiles have the side lock broken off.'],
  ['11:20:06', 'There is a crack in that one too. No, that is not a crack, that is a shadow.'],
  ['11:23:20', 'And the mortar at this pipe is in good order.'],
  ['11:24:30', 'That is it, coming down.'],
]

/** Writes the subtitle file. @param {string} file path of the .vtt */
export async function writeNarration(file) {
  await mkdir(dirname(file), { recursive: true })
  const cues = SPOKEN.map(([clock, text]) => {
    const from = secondsOf(clock) - STARTED_S
    // People say about fourteen letters a second.
    const to = from + Math.max(2, Math.round(text.length / 14))
    return `${timestamp(from)} --> ${timestamp(to)}\n<v Inspector>${text}\n`
  })
  const note = 'NOTE\nInvented: spoken by nobody, made for the sample job.\n'
  await writeFile(file, ['WEBVTT\n', note, ...cues].join('\n'))
}

/** @param {string} clock `HH:MM:SS` */
function secondsOf(clock) {
  const [hours = 0, minutes = 0, seconds = 0] = clock.split(':').map(Number)
  return (hours * 60 + minutes) * 60 + seconds
}

/** @param {number} seconds from the recording's start */
function timestamp(seconds) {
  const two = (/** @type {number} */ value) => String(value).padStart(2, '0')
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}.000`
}
