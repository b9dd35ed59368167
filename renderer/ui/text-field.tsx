import {
  FieldError,
  Input,
  Label,
  Text,
  TextField as AriaTextField,
  type TextFieldProps as AriaTextFieldProps,
} from 'react-aria-components'
import { classNames } from './class-names.ts'
import { errorsOnlyShown } from './field-errors.ts'
import styles from './field.module.css'

export interface TextFieldProps extends Omit<AriaTextFieldProps, 'className' | 'style' | 'children' | 'isInvalid'> {
  readonly label: string
  readonly hideLabel?: boolean
  /** One sentence that helps to fill it in. */
  readonly help?: string
  /** What is wrong with the value; null or left out when it is right. */
  readonly error?: string | null
  readonly placeholder?: string
}

/** One line of text with its label, help and error. */
export function TextField({ label, hideLabel = false, help, error = null, placeholder, ...rest }: TextFieldProps) {
  return (
    <AriaTextField {...rest} isInvalid={error !== null} {...errorsOnlyShown} className={styles['field'] ?? ''}>
      <Label className={classNames(styles['label'], hideLabel && styles['labelHidden'])}>{label}</Label>
      <Input className={styles['input'] ?? ''} {...(placeholder === undefined ? {} : { placeholder })} />
      {help === undefined ? null : (
        <Text slot="description" className={styles['help'] ?? ''}>
          {help}
        </Text>
      )}
      <FieldError className={styles['error'] ?? ''}>{error}</FieldError>
    </AriaTextField>
  )
}
