import { basisWords } from '../../evidence/catalog/basis.ts'
import { explanatoryNoteKeys, explanatoryNotes, type ExplanatoryNoteKey } from '../../evidence/catalog/notes.ts'
import { anchorOfNote } from '../anchors.ts'
import type { GroupBlock, Section } from '../document.ts'
import { findingLinks } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain } from '../text.ts'
import { paragraph, titledSection } from './section.ts'

/** The notes that findings refer to, each once; left out where none does. */
export function explanatoryNotesSection(context: PacketContext): Section | null {
  const named = new Set(context.findings.flatMap(({ noteKeys }) => noteKeys))
  const keys = explanatoryNoteKeys.filter((key) => named.has(key))
  if (keys.length === 0) return null
  return titledSection('explanatory-notes', 'Explanatory notes', [
    paragraph('General explanations with their sources. They say nothing of this roof by themselves.'),
    ...keys.map((key) => noteBlock(key, context)),
  ])
}

function noteBlock(key: ExplanatoryNoteKey, context: PacketContext): GroupBlock {
  const note = explanatoryNotes[key]
  const users = context.findings.filter(({ noteKeys }) => noteKeys.includes(key))
  const sources = note.sources.map(({ words, basis }) => `${words} [${basisWords[basis]}]`).join('; ')
  return {
    kind: 'group',
    blocks: [
      { kind: 'heading', level: 2, text: note.title, anchor: anchorOfNote(key), inOutline: true },
      ...note.paragraphs.map((words) => paragraph(words)),
      paragraph(`Sources: ${sources}.`, 'small'),
      paragraph([...plain('Named by '), ...findingLinks(users), ...plain('.')], 'small'),
    ],
  }
}
