/** What is drawn over photos of the walk, by the name of the view; places in pixels of the picture as it is looked at. */

/** @param {number} xPx @param {number} yPx */
const at = (xPx, yPx) => ({ xPx, yPx })

/** @type {Record<string, readonly object[]>} */
export const MARKS = {
  'corner-close': [
    {
      kind: 'scale',
      id: 'scale',
      colour: 'yellow',
      from: at(355, 797),
      to: at(355, 367),
      lengthIn: 5,
      of: 'printed scale, 0 to 5',
    },
    { kind: 'measure', id: 'break', from: at(693, 875), to: at(1033, 436), scaleId: 'scale' },
    { kind: 'text', id: 'words', colour: 'yellow', at: at(1010, 1010), text: 'Corner gone' },
  ],
  'slipped-scale': [
    { kind: 'ellipse', id: 'left-hole', centre: at(326, 720), radiusXPx: 46, radiusYPx: 40 },
    { kind: 'ellipse', id: 'right-hole', centre: at(625, 686), radiusXPx: 46, radiusYPx: 40 },
    { kind: 'arrow', id: 'slip', colour: 'sky-blue', from: at(690, 860), to: at(760, 1240), weight: 'bold' },
    { kind: 'text', id: 'words', at: at(250, 610), text: 'Old screw holes, empty' },
  ],
}
