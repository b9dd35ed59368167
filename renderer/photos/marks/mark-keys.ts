import type { Mark } from '../../../app/evidence/markup.ts'
import { markColourSchema } from '../../../app/evidence/markup/colours.ts'
import { markWeightSchema } from '../../../app/evidence/markup.ts'
import { type Command, useCommands } from '../../state/commands.ts'
import { drawnMark, handlesOf, movedMark, onPicture, restackedMarks, withHandle } from './mark-edits.ts'
import { markTools, toolOrder } from './mark-tools.ts'
import type { MarkEditor } from './use-mark-editor.ts'
import { lastScale, placeMark } from './use-mark-pointer.ts'

/** A step by an arrow key, and a large one with Shift, as parts of the picture's longer side. */
const STEP_PART = 0.002
const LARGE_STEPS = 10
/** How long a mark placed by key is, as a part of the picture's longer side. */
const PLACED_PART = 0.16

const ways = [
  { key: 'ArrowLeft', words: 'left', x: -1, y: 0 },
  { key: 'ArrowRight', words: 'right', x: 1, y: 0 },
  { key: 'ArrowUp', words: 'up', x: 0, y: -1 },
  { key: 'ArrowDown', words: 'down', x: 0, y: 1 },
] as const

/** Every key of marking: tools, look, place and size of the picked mark, and the way out. */
export function useMarkKeys(editor: MarkEditor, onLeave: () => void): void {
  useCommands([...toolCommands(editor), ...pickedCommands(editor), ...moveCommands(editor), wayOut(editor, onLeave)])
}

const command = (id: string, rest: Omit<Command, 'id'>): Command => ({ id: `photo-marks.${id}`, ...rest })

function toolCommands(editor: MarkEditor): readonly Command[] {
  const { tool, style, selected } = editor
  return [
    ...toolOrder.map((name) =>
      command(name, {
        label: markTools[name].label,
        keys: markTools[name].key,
        enabled: true,
        perform: () => editor.setTool(name),
      }),
    ),
    command('place', {
      label: 'Place the mark in the middle, to be moved by arrow keys',
      keys: 'Enter',
      enabled: tool !== 'pick' && selected === null,
      perform: () => placeInMiddle(editor),
    }),
    command('colour', {
      label: 'Next colour',
      keys: 'C',
      enabled: true,
      perform: () => restyle(editor, nextColour(editor)),
    }),
    command('weight', {
      label: 'Next width',
      keys: 'W',
      enabled: true,
      perform: () => restyle(editor, { ...style, weight: after(markWeightSchema.options, style.weight) }),
    }),
  ]
}

function nextColour({ style, selected }: MarkEditor) {
  const now = selected !== null && 'colour' in selected ? selected.colour : style.colour
  return { ...style, colour: after(markColourSchema.options, now) }
}

/** Changes how the next marks look, and the picked one at once. */
export function restyle(editor: MarkEditor, style: MarkEditor['style']): void {
  const { selected, draft } = editor
  editor.setStyle(style)
  if (selected === null || selected.kind === 'obscured') return
  const changed: Mark = { ...selected, ...style }
  if (draft === null) editor.keep(changed)
  else editor.setDraft(changed)
}

function after<T>(all: readonly T[], now: T): T {
  return all[(all.indexOf(now) + 1) % all.length] ?? now
}

function pickedCommands(editor: MarkEditor): readonly Command[] {
  const { selected, marks } = editor
  const enabled = selected !== null
  const id = selected?.id ?? ''
  return [
    command('remove', {
      label: 'Remove the picked mark',
      keys: 'Delete or Backspace',
      enabled,
      perform: () => editor.remove(id),
    }),
    command('raise', {
      label: 'One up in the stack',
      keys: 'PageUp',
      enabled,
      perform: () => editor.save(restackedMarks(marks, id, 1)),
    }),
    command('lower', {
      label: 'One down in the stack',
      keys: 'PageDown',
      enabled,
      perform: () => editor.save(restackedMarks(marks, id, -1)),
    }),
  ]
}

function moveCommands(editor: MarkEditor): readonly Command[] {
  const { selected, picture } = editor
  const enabled = selected !== null
  const step = Math.max(picture.widthPx, picture.heightPx) * STEP_PART
  const change = (make: (mark: Mark) => Mark) => {
    if (selected === null) return
    if (editor.draft === null) editor.nudge(make(selected))
    else editor.setDraft(make(selected))
  }
  const move = (way: (typeof ways)[number], steps: number) =>
    change((mark) => movedMark(mark, { x: way.x * step * steps, y: way.y * step * steps }, picture))
  const stretch = (way: (typeof ways)[number]) =>
    change((mark) => {
      const handle = handlesOf(mark).at(-1)
      if (handle === undefined) return mark
      const { xPx, yPx } = handle.at
      const to = { xPx: xPx + way.x * step * LARGE_STEPS, yPx: yPx + way.y * step * LARGE_STEPS }
      return withHandle(mark, handle.key, onPicture(to, picture))
    })
  return ways.flatMap((way) => [
    command(`move-${way.words}`, { label: `Move ${way.words}`, keys: way.key, enabled, perform: () => move(way, 1) }),
    command(`move-far-${way.words}`, {
      label: `Move far ${way.words}`,
      keys: `Shift+${way.key}`,
      enabled,
      perform: () => move(way, LARGE_STEPS),
    }),
    command(`stretch-${way.words}`, {
      label: `Move the end ${way.words}`,
      keys: `Alt+${way.key}`,
      enabled,
      perform: () => stretch(way),
    }),
  ])
}

function wayOut(editor: MarkEditor, onLeave: () => void): Command {
  return command('leave', {
    label: 'Let go of the mark, then leave marking',
    keys: 'Escape',
    enabled: true,
    perform() {
      if (editor.selected !== null) editor.select(null)
      else if (editor.tool !== 'pick') editor.setTool('pick')
      else onLeave()
    },
  })
}

/** A mark in the middle of the picture, for those who don't use a pointer. */
function placeInMiddle(editor: MarkEditor): void {
  const { tool, picture, style, marks } = editor
  if (tool === 'pick') return
  const half = (Math.max(picture.widthPx, picture.heightPx) * PLACED_PART) / 2
  const middle = { xPx: picture.widthPx / 2, yPx: picture.heightPx / 2 }
  const path = [
    { xPx: middle.xPx - half, yPx: middle.yPx - half / 2 },
    { xPx: middle.xPx + half, yPx: middle.yPx + half / 2 },
  ]
  const mark = drawnMark({ ...style, id: crypto.randomUUID(), kind: tool, path, scaleId: lastScale(marks), picture })
  if (mark !== null) placeMark(editor, mark)
}
