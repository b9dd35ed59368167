import styles from './sheet.module.css'

/**
 * What to weigh before anyone goes up: US federal rules for work at height. The exception for inspections is in the
 * OSHA interpretation letter of 2 March 2010.
 */
export function HeightCaution() {
  return (
    <div className={styles['caution']} role="note" aria-label="Caution">
      <h4 className={styles['cautionTitle']}>Before anyone goes up</h4>
      <ul className={styles['cautionList']}>
        <li>
          Falls: from 6 ft above a lower level, residential construction needs guardrails, a net or personal fall arrest{' '}
          <span className={styles['source']}>(29 CFR 1926.501(b)(13))</span>. An inspection before work starts or after
          all of it is done may be excepted, not without limits{' '}
          <span className={styles['source']}>(29 CFR 1926.500(a)(1))</span>.
        </li>
        <li>
          Ladder: rails 3 ft above the landing or a grab device, foot out one quarter of the working length{' '}
          <span className={styles['source']}>(29 CFR 1926.1053(b); check the text)</span>.
        </li>
        <li>
          Weather: stay off a wet roof, and off any roof in wind, lightning or the dark; photos from a drone or a pole
          serve instead <span className={styles['source']}>(common practice)</span>.
        </li>
      </ul>
      <p>Local rules and a competent person on the site decide.</p>
    </div>
  )
}
