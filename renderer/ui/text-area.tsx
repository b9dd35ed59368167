import { FieldError, Label, Text, TextArea as AriaTextArea, TextField as AriaTextField } from 'react-aria-components'
import { classNames } from './class-names.ts'
import { errorsOnlyShown } from './field-errors.ts'
import styles from './field.module.css'
import type { TextFieldProps } from './text-field.tsx'

export interface TextAreaProps extends TextFieldProps {
  /** Lines shown at first; a person can pull it larger. */
  readonly rows?: number
}

/** Several lines of text with label, help and error. */
export function TextArea({
  label,
  hideLabel = false,
  help,
  error = null,
  placeholder,
  rows = 3,
  ...rest
}: TextAreaProps) {
  return (
    <AriaTextField {...rest} isInvalid={error !== null} {...errorsOnlyShown} className={styles['field'] ?? ''}>
      <Label className={classNames(styles['label'], hideLabel && styles['labelHidden'])}>{label}</Label>
      <AriaTextArea
        rows={rows}
        className={classNames(styles['input'], styles['area'])}
        {...(placeholder === undefined ? {} : { placeholder })}
      />
      {help === undefined ? null : (
        <Text slot="description" className={styles['help'] ?? ''}>
          {help}
        </Text>
      )}
      <FieldError className={styles['error'] ?? ''}>{error}</FieldError>
    </AriaTextField>
  )
}
