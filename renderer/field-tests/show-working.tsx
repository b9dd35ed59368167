import styles from './field-tests.module.css'

/** The figures behind what is shown, folded until asked for. */
export function ShowWorking({ lines }: { lines: readonly string[] }) {
  return (
    <details className={styles['working']}>
      <summary>Show working</summary>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  )
}
