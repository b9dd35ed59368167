import { remembered } from './remembered.ts'

/** Forms that no rule finds. */
const IRREGULAR: Readonly<Record<string, string>> = {
  broke: 'break',
  broken: 'break',
  slid: 'slide',
  stare: 'look',
  staring: 'look',
  stared: 'look',
  torn: 'tear',
  tore: 'tear',
  gone: 'gone',
  went: 'go',
  lost: 'lose',
  bent: 'bend',
  blown: 'blow',
  blew: 'blow',
  came: 'come',
  fell: 'fall',
  fallen: 'fall',
  flew: 'fly',
  flown: 'fly',
  worn: 'wear',
  wore: 'wear',
  rose: 'rise',
  risen: 'rise',
  stuck: 'stick',
  shook: 'shake',
  shaken: 'shake',
  sat: 'sit',
  stood: 'stand',
  lain: 'lie',
  laid: 'lie',
  lay: 'lie',
  lying: 'lie',
  made: 'make',
  put: 'put',
  hung: 'hang',
  struck: 'strike',
  kept: 'keep',
  held: 'hold',
  crept: 'creep',
  ate: 'eat',
  eaten: 'eat',
  rotten: 'rot',
  loosened: 'loose',
  loosen: 'loose',
  loosening: 'loose',
  halves: 'half',
  leaves: 'leaf',
  feet: 'foot',
  colour: 'color',
  colours: 'color',
  coloured: 'color',
  colored: 'color',
  discoloured: 'discolor',
  driven: 'drive',
  drove: 'drive',
  shorn: 'shear',
  sheared: 'shear',
  were: 'be',
  was: 'be',
  is: 'be',
  are: 'be',
  am: 'be',
  been: 'be',
  being: 'be',
  has: 'have',
  had: 'have',
  having: 'have',
  does: 'do',
  did: 'do',
  done: 'do',
  saw: 'see',
  seen: 'see',
  got: 'get',
  gotten: 'get',
  said: 'say',
  told: 'tell',
  took: 'take',
  taken: 'take',
  threw: 'throw',
  thrown: 'throw',
  shrank: 'shrink',
  shrunk: 'shrink',
  spun: 'spin',
  swung: 'swing',
  ran: 'run',
  found: 'find',
  gave: 'give',
  given: 'give',
  rode: 'ride',
  ridden: 'ride',
  grew: 'grow',
  grown: 'grow',
  goes: 'go',
  going: 'go',
  doing: 'do',
}

/** Forms that no rule finds, of words whose stems are given. */
export function irregularForms(stems: ReadonlySet<string>): readonly string[] {
  return Object.keys(IRREGULAR).filter((form) => stems.has(stem(form)))
}

/**
 * A word brought to a form that its inflections share: "slipped", "slips" and "slipping" become "slip". It is no English
 * word always; words are only compared in this form.
 */
export const stem = remembered((word) =>
  undoubled(Object.hasOwn(IRREGULAR, word) ? (IRREGULAR[word] ?? word) : withoutEnding(word)),
)

function withoutEnding(word: string): string {
  let base = word
  if (base.length > 4 && base.endsWith('ies')) base = `${base.slice(0, -3)}y`
  else if (base.length > 4 && /(sh|ch|x|ss|zz)es$/.test(base)) base = base.slice(0, -2)
  else if (base.length > 3 && /[^sui]s$/.test(base)) base = base.slice(0, -1)
  if (base.length > 5 && base.endsWith('ing')) return base.slice(0, -3)
  if (base.length > 4 && base.endsWith('ed')) return base.slice(0, -2)
  return base
}

/** Drops a last "e" and a doubled last letter, which endings hide. */
function undoubled(word: string): string {
  const base = word.length > 3 && word.endsWith('e') ? word.slice(0, -1) : word
  return base.length > 3 && /([a-z])\1$/.test(base) ? base.slice(0, -1) : base
}
