import { useRef } from 'react'
import { AttachmentList } from './attachment-list.tsx'
import { CameraClocks } from './camera-clocks.tsx'
import { CoveringSection } from './covering-section.tsx'
import { DatedNotesSection } from './dated-notes-section.tsx'
import { InspectionSection } from './inspection-section.tsx'
import { LossSection } from './loss-section.tsx'
import { ContactsSection, ContractorSection, InsuranceSection, NotesSection, OwnerSection } from './people-sections.tsx'
import { PropertySection } from './property-section.tsx'
import { SheetSaver } from './sheet-saver.tsx'
import styles from './sheet.module.css'
import { useFieldJump } from './use-field-jump.ts'

/** The job sheet: what the office knows of the house, the people, the loss and the roof. Each section is saved when it is left. */
export function SheetWorkspace() {
  const scroller = useRef<HTMLDivElement>(null)
  useFieldJump(scroller)
  return (
    <div ref={scroller} className={styles['sheet']}>
      <div className={styles['inner']}>
        <h2 className={styles['title']}>Job sheet</h2>
        <SheetSaver>
          <PropertySection />
          <OwnerSection />
          <InsuranceSection />
          <LossSection />
          <CoveringSection />
          <InspectionSection />
          <CameraClocks />
          <DatedNotesSection which="permits" />
          <DatedNotesSection which="priorRepairs" />
          <ContractorSection />
          <ContactsSection />
          <NotesSection />
          <AttachmentList />
        </SheetSaver>
      </div>
    </div>
  )
}
