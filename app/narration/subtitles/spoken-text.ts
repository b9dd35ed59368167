const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  nbsp: ' ',
  lrm: '',
  rlm: '',
  quot: '"',
}

/** What is said in a cue, without markup, and by whom where a voice tag or a leading dash with a name says it. */
export function spokenText(raw: string): { readonly text: string; readonly speaker: string } {
  const speaker = /<v(?:\.[^\s>]*)?\s+([^>]+)>/.exec(raw)?.[1]?.trim() ?? ''
  const text = raw
    .replace(/<\/?[a-z0-9][^<>\n]{0,200}>/gi, '')
    .replace(/\{\\[^}]{0,40}\}/g, '')
    .replace(/&([a-z]{2,4});/gi, (all, name: string) => ENTITIES[name.toLowerCase()] ?? all)
    .replace(/\s+/g, ' ')
    .trim()
  return { text, speaker: speaker.slice(0, 120) }
}
