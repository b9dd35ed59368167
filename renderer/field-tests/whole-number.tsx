import { KeptText } from './kept-text.tsx'

interface WholeNumberProps {
  readonly label: string
  readonly hideLabel?: boolean
  readonly value: number
  readonly onChange: (value: number) => void
  /** A sentence for a count that does not fit the others. */
  readonly faultOf?: (value: number) => string | null
}

/** A count: a whole number of 0 or more. */
export function WholeNumber({ value, onChange, faultOf, ...rest }: WholeNumberProps) {
  return (
    <KeptText
      {...rest}
      value={String(value)}
      faultOf={(text) =>
        /^\d{1,6}$/.test(text.trim()) ? (faultOf?.(Number(text)) ?? null) : 'A count is a whole number of 0 or more.'
      }
      onChange={(text) => onChange(Number(text))}
    />
  )
}
