import { useMemo } from 'react'
import {
  Button,
  ComboBox,
  FieldError,
  Header,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  Popover,
  Select,
  SelectValue,
  Text,
} from 'react-aria-components'
import { classNames } from './class-names.ts'
import { errorsOnlyShown } from './field-errors.ts'
import styles from './field.module.css'
import { Icon } from './icon.tsx'

export interface Option<Key extends string> {
  readonly key: Key
  readonly label: string
  /** Heading that the option stands under. */
  readonly section?: string
  /** A few quiet words at the end of the line. */
  readonly hint?: string
}

export interface SelectFieldProps<Key extends string> {
  readonly label: string
  readonly hideLabel?: boolean
  readonly options: readonly Option<Key>[]
  readonly value: Key | null
  /** Null when the choice is taken back, which only happens with `emptyLabel`. */
  readonly onChange: (key: Key | null) => void
  /** Words for choosing nothing, such as "No facet"; left out where something must be chosen. */
  readonly emptyLabel?: string
  readonly placeholder?: string
  readonly help?: string
  readonly error?: string | null
  readonly isDisabled?: boolean
  readonly name?: string
}

/** More choices than this are searched by typing. */
const SEARCH_ABOVE = 10
/** Identity of the line that chooses nothing; no real key starts with a space. */
const NOTHING = ' nothing'

interface Line {
  readonly key: string
  readonly label: string
  readonly hint?: string
}

/** One choice out of a list; a long list is searched by typing. */
export function SelectField<Key extends string>(props: SelectFieldProps<Key>) {
  const { options, value, onChange, emptyLabel } = props
  const sections = useMemo(() => sectionsOf(options, emptyLabel), [options, emptyLabel])
  function choose(chosen: string | number | null) {
    if (chosen === NOTHING || chosen === null) {
      if (emptyLabel !== undefined && value !== null) onChange(null)
      return
    }
    const option = options.find((candidate) => candidate.key === chosen)
    if (option !== undefined && option.key !== value) onChange(option.key)
  }
  const selected = value ?? (emptyLabel === undefined ? null : NOTHING)
  const shared = { ...props, sections, selected, choose }
  return options.length > SEARCH_ABOVE ? <Searched {...shared} /> : <Plain {...shared} />
}

interface ShapeProps {
  readonly label: string
  readonly hideLabel?: boolean
  readonly placeholder?: string
  readonly help?: string
  readonly error?: string | null
  readonly isDisabled?: boolean
  readonly name?: string
  readonly sections: ReadonlyMap<string, readonly Line[]>
  readonly selected: string | null
  readonly choose: (key: string | number | null) => void
}

function Plain({ label, hideLabel, placeholder, help, error = null, isDisabled = false, name, ...choice }: ShapeProps) {
  return (
    <Select
      selectedKey={choice.selected}
      onSelectionChange={choice.choose}
      isDisabled={isDisabled}
      isInvalid={error !== null}
      {...errorsOnlyShown}
      placeholder={placeholder ?? 'Choose'}
      className={styles['field'] ?? ''}
      {...(name === undefined ? {} : { name })}
    >
      <FieldLabel label={label} hideLabel={hideLabel === true} />
      <Button className={classNames(styles['input'], styles['selectButton'])}>
        <SelectValue className={styles['selectValue'] ?? ''} />
        <Icon name="down" />
      </Button>
      <FieldNotes help={help} error={error} />
      <Popover className={styles['popover'] ?? ''}>
        <Lines sections={choice.sections} />
      </Popover>
    </Select>
  )
}

function Searched({
  label,
  hideLabel,
  placeholder,
  help,
  error = null,
  isDisabled = false,
  name,
  ...choice
}: ShapeProps) {
  return (
    <ComboBox
      selectedKey={choice.selected}
      // The list is not there yet when a dialog opens with the cursor in this field.
      defaultInputValue={labelOf(choice.sections, choice.selected)}
      onSelectionChange={choice.choose}
      isDisabled={isDisabled}
      isInvalid={error !== null}
      {...errorsOnlyShown}
      menuTrigger="focus"
      className={styles['field'] ?? ''}
      {...(name === undefined ? {} : { name })}
    >
      <FieldLabel label={label} hideLabel={hideLabel === true} />
      <span className={styles['comboRow']}>
        <Input
          className={classNames(styles['input'], styles['comboInput'])}
          placeholder={placeholder ?? 'Type to search'}
        />
        <Button className={styles['comboButton'] ?? ''}>
          <Icon name="down" />
        </Button>
      </span>
      <FieldNotes help={help} error={error} />
      <Popover className={styles['popover'] ?? ''}>
        <Lines sections={choice.sections} />
      </Popover>
    </ComboBox>
  )
}

function labelOf(sections: ShapeProps['sections'], key: string | null): string {
  return [...sections.values()].flat().find((line) => line.key === key)?.label ?? ''
}

function FieldLabel({ label, hideLabel }: { label: string; hideLabel: boolean }) {
  return <Label className={classNames(styles['label'], hideLabel && styles['labelHidden'])}>{label}</Label>
}

function FieldNotes({ help, error }: { help: string | undefined; error: string | null }) {
  return (
    <>
      {help === undefined ? null : (
        <Text slot="description" className={styles['help'] ?? ''}>
          {help}
        </Text>
      )}
      <FieldError className={styles['error'] ?? ''}>{error}</FieldError>
    </>
  )
}

function Lines({ sections }: { sections: ReadonlyMap<string, readonly Line[]> }) {
  return (
    <ListBox
      className={styles['list'] ?? ''}
      renderEmptyState={() => <span className={styles['section']}>Nothing fits these letters.</span>}
    >
      {[...sections].map(([title, lines]) =>
        title === '' ? (
          lines.map((line) => <OptionLine key={line.key} line={line} />)
        ) : (
          <ListBoxSection key={title} id={title}>
            <Header className={styles['section'] ?? ''}>{title}</Header>
            {lines.map((line) => (
              <OptionLine key={line.key} line={line} />
            ))}
          </ListBoxSection>
        ),
      )}
    </ListBox>
  )
}

function OptionLine({ line }: { line: Line }) {
  return (
    <ListBoxItem id={line.key} textValue={line.label} className={styles['option'] ?? ''}>
      <Text slot="label">{line.label}</Text>
      {line.hint === undefined ? null : (
        <Text slot="description" className={styles['optionHint'] ?? ''}>
          {line.hint}
        </Text>
      )}
    </ListBoxItem>
  )
}

function sectionsOf(
  options: readonly Option<string>[],
  emptyLabel: string | undefined,
): ReadonlyMap<string, readonly Line[]> {
  const sections = new Map<string, Line[]>()
  if (emptyLabel !== undefined) sections.set('', [{ key: NOTHING, label: emptyLabel }])
  for (const option of options) {
    const title = option.section ?? ''
    const lines = sections.get(title)
    if (lines === undefined) sections.set(title, [option])
    else lines.push(option)
  }
  return sections
}
