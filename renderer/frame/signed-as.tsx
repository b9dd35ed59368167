import { useLibrary } from '../state/library.tsx'
import { Button } from '../ui/button.tsx'
import { useStoredFlag } from '../ui/use-stored-flag.ts'
import { useDeskServices } from './desk-services.tsx'
import styles from './signed-as.module.css'

/** Whose name goes into the evidence log; asks once whether it is the right one. */
export function SignedAs() {
  const { info } = useLibrary()
  const { askOperator } = useDeskServices()
  const [isSettled, setSettled] = useStoredFlag('battenbook-name-settled')
  if (info === null) return null
  const change = () => {
    setSettled(true)
    askOperator()
  }
  if (isSettled) {
    return (
      <Button look="quiet" onPress={change} aria-label={`Signing as ${info.operator}. Change the name`}>
        <span className={styles['name']}>{info.operator}</span>
      </Button>
    )
  }
  return (
    <div className={styles['question']} role="group" aria-label="Your name">
      <p>
        The log signs your work <strong>{info.operator}</strong>.
      </p>
      <div className={styles['answers']}>
        <Button onPress={() => setSettled(true)}>That is me</Button>
        <Button onPress={change}>Change</Button>
      </div>
    </div>
  )
}
