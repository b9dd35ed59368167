import type { ReactNode } from 'react'
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { classNames } from './class-names.ts'
import styles from './dialog.module.css'
import { focusFirstField } from './focus-first-field.ts'
import { IconButton } from './icon-button.tsx'

export interface DialogProps {
  readonly title: string
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly children: ReactNode
  /** Buttons at the foot, the main one last. */
  readonly actions?: ReactNode
  readonly size?: 'small' | 'medium' | 'large' | 'full'
  /** `alertdialog` for one that asks before something is lost. */
  readonly role?: 'dialog' | 'alertdialog'
}

/** A window over the desk; it opens with the cursor in its first field. Escape or a click beside it closes it. */
export function Dialog({ title, isOpen, onClose, children, actions, size = 'medium', role = 'dialog' }: DialogProps) {
  return (
    <ModalOverlay
      isOpen={isOpen}
      onOpenChange={(open) => {
        if (!open) onClose()
      }}
      isDismissable
      className={styles['veil'] ?? ''}
    >
      <Modal className={classNames(styles['sheet'], styles[size])}>
        <AriaDialog role={role} className={styles['dialog'] ?? ''}>
          <header className={styles['head']}>
            <Heading slot="title" level={2} className={styles['title'] ?? ''}>
              {title}
            </Heading>
            <IconButton icon="close" label="Close" keys="Escape" onPress={onClose} />
          </header>
          <div ref={focusFirstField} className={styles['body']}>
            {children}
          </div>
          {actions === undefined ? null : <footer className={styles['foot']}>{actions}</footer>}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  )
}
