import { useMemo, useState } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { AddFilesButton } from '../frame/add-files.tsx'
import { draftFromPhotos, type FindingDraft } from '../findings/finding-draft.ts'
import { FindingDialog } from '../findings/finding-dialog.tsx'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { ContactSheet } from './contact-sheet.tsx'
import { PhotoTally } from './photo-tally.tsx'
import { EVERY_PHOTO, filteredPhotos } from './photo-filter.ts'
import { photosById } from './photo-index.ts'
import { groupedPhotos } from './photo-groups.ts'
import { sortedPhotos } from './photo-order.ts'
import { PhotosBar, type SheetLook } from './photos-bar.tsx'
import { PhotoViewer } from './photo-viewer.tsx'
import styles from './photos-workspace.module.css'
import { TagBar } from './tag-bar.tsx'
import { useTagging } from './use-tagging.ts'
import { usePicking } from './use-picking.ts'

/** The photos: a contact sheet or one large, and the bar that tags what is selected. */
export function PhotosWorkspace() {
  const { photos } = useJob()
  if (photos.length === 0) {
    return (
      <EmptyState
        title="No photo is in this job yet"
        sentence="Drop a folder, a card or single files anywhere in this window. Originals are kept byte for byte."
      >
        <AddFilesButton look="main" />
      </EmptyState>
    )
  }
  return <PhotoDesk />
}

function PhotoDesk() {
  const { photos, facets } = useJob()
  const { selection } = useSelection()
  const { photos: tagged } = useTagging()
  const [look, setLook] = useState<SheetLook>({ sort: 'time', grouping: 'none', tilePx: 168 })
  const [filter, setFilter] = useState(EVERY_PHOTO)
  const [isLarge, setLarge] = useState(false)
  const [newFinding, setNewFinding] = useState<FindingDraft | null>(null)
  const { groups, order } = useArrangement({ photos, facets, look, filter })
  const orderIds = useMemo(() => order.map(({ id }) => id), [order])
  const picking = usePicking(orderIds)
  const lead = selection.kind === 'photos' ? selection.lead : null
  const large = isLarge && lead !== null ? (photosById(photos).get(lead) ?? null) : null
  const open = (id: PhotoId) => {
    if (!picking.pickedIds.has(id)) picking.pick(id, 'alone')
    setLarge(true)
  }
  return (
    <div className={styles['workspace']}>
      {large === null ? (
        <>
          <PhotosBar look={look} onLook={setLook} filter={filter} onFilter={setFilter} />
          <PhotoTally shown={order.length} filter={filter} onFilter={setFilter} />
          <div className={styles['sheet']}>
            {order.length === 0 ? (
              <p className={styles['none']}>No photo fits. Clear a filter to see more.</p>
            ) : (
              <ContactSheet
                groups={groups}
                tilePx={look.tilePx}
                picked={picking.pickedIds}
                lead={lead}
                onPick={picking.pick}
                onPickAll={picking.pickAll}
                onOpen={open}
              />
            )}
          </div>
        </>
      ) : (
        <div className={styles['sheet']}>
          <PhotoViewer
            order={order}
            photo={large}
            beside={besideOf(large, tagged)}
            onShow={(id) => picking.pick(id, 'alone')}
            onClose={() => setLarge(false)}
          />
        </div>
      )}
      <TagBar onNext={picking.pickNext} onNewFinding={() => setNewFinding(draftFromPhotos(tagged))} />
      {newFinding === null ? null : <FindingDialog start={newFinding} onClose={() => setNewFinding(null)} />}
    </div>
  )
}

interface Arranging extends Pick<JobSnapshot, 'photos' | 'facets'> {
  readonly look: SheetLook
  readonly filter: typeof EVERY_PHOTO
}

function useArrangement({ photos, facets, look, filter }: Arranging) {
  const { sort, grouping } = look
  return useMemo(() => {
    // Pauses only mean something in the order of time.
    const inOrder = sortedPhotos(photos, grouping === 'gap' ? 'time' : sort)
    const groups = groupedPhotos(filteredPhotos(inOrder, filter), grouping, facets)
    return { groups, order: groups.flatMap((group) => group.photos) }
  }, [photos, facets, sort, grouping, filter])
}

/** Two selected photos are compared; any other number shows one. */
function besideOf(large: Photo, selected: readonly Photo[]): Photo | null {
  if (selected.length !== 2) return null
  return selected.find(({ id }) => id !== large.id) ?? null
}
