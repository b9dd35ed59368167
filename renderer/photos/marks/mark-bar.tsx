import { markColourSchema, markLooks, type MarkColour } from '../../../app/evidence/markup/colours.ts'
import { markWeightSchema } from '../../../app/evidence/markup.ts'
import { markupWords } from '../../../app/evidence/markup/words.ts'
import { Button } from '../../ui/button.tsx'
import { IconButton } from '../../ui/icon-button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { MarkFields } from './mark-fields.tsx'
import { restyle } from './mark-keys.ts'
import { markTools, toolOrder } from './mark-tools.ts'
import styles from './marks.module.css'
import type { MarkEditor } from './use-mark-editor.ts'

const weights = markWeightSchema.options.map((key) => ({
  key,
  label: { fine: 'Fine', normal: 'Normal', bold: 'Bold' }[key],
}))

/** The bar under a picture that is marked: tools, looks, and the fields of the picked mark. */
export function MarkBar({ editor, onDone }: { editor: MarkEditor; onDone: () => void }) {
  const { tool, style, selected } = editor
  const look = selected !== null && 'colour' in selected ? selected : style
  return (
    <section className={styles['bar']} aria-label="Marks">
      <div className={styles['tools']} role="group" aria-label="Tools">
        {toolOrder.map((name) => (
          <Button
            key={name}
            look={tool === name ? 'main' : 'quiet'}
            aria-pressed={tool === name}
            onPress={() => editor.setTool(name)}
          >
            {markTools[name].label} <KeyHint keys={markTools[name].key} />
          </Button>
        ))}
      </div>
      <div className={styles['looks']} role="group" aria-label="Colour, next with C">
        {markColourSchema.options.map((colour) => (
          <Swatch
            key={colour}
            colour={colour}
            isChosen={look.colour === colour}
            onPress={() => restyle(editor, { colour, weight: look.weight })}
          />
        ))}
      </div>
      <SegmentedChoice
        label="Width"
        hideLabel
        options={weights}
        value={look.weight}
        onChange={(weight) => restyle(editor, { colour: look.colour, weight })}
      />
      <MarkFields editor={editor} />
      <p className={styles['say']} role="status">
        {sayOf(editor)}
      </p>
      <IconButton
        icon="trash"
        label="Remove the picked mark"
        keys="Delete"
        isDisabled={selected === null}
        onPress={() => selected !== null && editor.remove(selected.id)}
      />
      <Button onPress={onDone}>
        Done <KeyHint keys="M" />
      </Button>
    </section>
  )
}

function sayOf({ tool, selected, marks, photo }: MarkEditor): string {
  if (selected !== null)
    return 'Arrow keys move it, with Shift far, with Alt its end; Page Up and Page Down restack it.'
  if (tool !== 'pick' || marks.length === 0) return markTools[tool === 'pick' ? 'arrow' : tool].how
  return `${markupWords({ photoId: photo.id, marks: [...marks] })}. ${markTools.pick.how}`
}

interface SwatchProps {
  readonly colour: MarkColour
  readonly isChosen: boolean
  readonly onPress: () => void
}

function Swatch({ colour, isChosen, onPress }: SwatchProps) {
  const { label, hex, edgeHex, dash, pattern } = markLooks[colour]
  const line = { x1: 3, y1: 7, x2: 33, y2: 7 }
  return (
    <button
      type="button"
      className={styles['swatch']}
      aria-pressed={isChosen}
      aria-label={`${label}, ${pattern}`}
      title={`${label}, ${pattern}`}
      onClick={onPress}
    >
      <svg width={36} height={14} aria-hidden="true">
        <rect width={36} height={14} fill="#8A8A8A" />
        <line {...line} stroke={edgeHex} strokeWidth={7} />
        <line {...line} stroke={hex} strokeWidth={4} strokeDasharray={dash.map((part: number) => part * 4).join(' ')} />
      </svg>
    </button>
  )
}
