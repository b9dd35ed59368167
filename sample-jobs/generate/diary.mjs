/** A few entries of the diary; people, calls and papers are invented. */
const zone = 'America/New_York'
/** @param {string} date @param {string} time */
const at = (date, time) => ({ date, time, timeZone: zone })

/** @type {any[]} */
export const DIARY = [
  {
    kind: 'call',
    at: at('2026-11-06', '08:40'),
    person: 'Odile Brannigan-Sorel (invented)',
    direction: 'they-called',
    text: 'She heard tiles move in the night of the 4th and found pieces on the lawn left of the house. No water inside as far as she has seen. Asked for somebody to look at the roof.',
  },
  {
    kind: 'received',
    at: at('2026-11-09', '16:05'),
    from: 'Odile Brannigan-Sorel (invented)',
    what: 'Copy of the permit of the present roof',
    medium: 'by e-mail',
    text: 'One page, readable.',
  },
  {
    kind: 'call',
    at: at('2026-11-13', '10:15'),
    person: 'two salvage yards (invented)',
    direction: 'we-called',
    text: 'One has about 40 used tiles that may lock with these; the other has none. Not yet compared.',
  },
  {
    kind: 'reminder',
    at: at('2026-11-20', '09:00'),
    text: 'Compare the used tiles at the salvage yard with one from the roof',
  },
].map((content, i) => ({ number: i + 1, content }))
