import { chosenCriterion, criteriaOf, isAgencyTest } from '../../app/fieldtest/criteria/criteria.ts'
import { ruleWords } from '../../app/fieldtest/criteria/criterion.ts'
import { NumberField } from '../ui/number-field.tsx'
import { Panel } from '../ui/panel.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './field-tests.module.css'
import { InstrumentsPanel } from './instruments-panel.tsx'
import { KeptText } from './kept-text.tsx'
import { OwnCriteriaPanel } from './own-criteria-panel.tsx'
import { useSurvey } from './use-survey.ts'

/** What readings are held against, who may use it, and the instruments. */
export function CriterionPane() {
  const { survey, save } = useSurvey()
  const asked = criteriaOf(survey).find(({ key }) => key === survey.criterionKey)
  const used = chosenCriterion(survey)
  return (
    <>
      <Panel title="Criterion">
        <div className={styles['details']}>
          <SelectField
            label="Readings are held against"
            options={criteriaOf(survey).map(({ key, name, status }) => ({ key, label: name, hint: status }))}
            value={survey.criterionKey}
            onChange={(key) => {
              if (key !== null) void save({ criterionKey: key })
            }}
          />
          {asked !== undefined && asked.key !== used.key ? (
            <p className={styles['bad']}>
              ▲ This protocol is for approved testing agencies. Name the agency, its approval and its report below;
              until then the hand-lift survey’s rule is used.
            </p>
          ) : null}
          <p>
            <strong>{used.name}.</strong> {ruleWords(used.rule)} [{used.status}]
          </p>
          <p className={styles['quiet']}>Scope: {used.scope}</p>
          <p className={styles['quiet']}>Source: {used.source}</p>
          <ul>
            {used.cautions.map((caution) => (
              <li key={caution} className={styles['quiet']}>
                {caution}
              </li>
            ))}
          </ul>
        </div>
      </Panel>
      <AgencyPanel />
      <OwnCriteriaPanel />
      <InstrumentsPanel />
    </>
  )
}

function AgencyPanel() {
  const { survey, save } = useSurvey()
  const setAgency = (set: Partial<typeof survey.agency>) => void save({ agency: { ...survey.agency, ...set } })
  return (
    <Panel title="Approved testing agency">
      <p className={styles['quiet']}>
        {isAgencyTest(survey)
          ? 'The packet may name the protocol, since an approved agency tested.'
          : 'Leave this empty unless an agency that the county has approved made the test. All three are needed before a packet names the protocol.'}
      </p>
      <div className={styles['fields']}>
        <KeptText label="Agency" value={survey.agency.name} onChange={(name) => setAgency({ name })} />
        <KeptText label="Approval" value={survey.agency.approval} onChange={(approval) => setAgency({ approval })} />
        <KeptText label="Report" value={survey.agency.report} onChange={(report) => setAgency({ report })} />
        <NumberField
          label="Listed resistance"
          unit="lbf"
          min={0.1}
          max={1000}
          value={survey.listedResistanceLbf}
          onChange={(listedResistanceLbf) => void save({ listedResistanceLbf })}
          help="From the tile’s product approval."
        />
      </div>
    </Panel>
  )
}
