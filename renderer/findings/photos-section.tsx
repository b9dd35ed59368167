import { useState } from 'react'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { type PhotoRole, photoRoleSchema } from '../../app/evidence/catalog/keys.ts'
import type { Finding } from '../../app/evidence/finding.ts'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { photosById } from '../photos/photo-index.ts'
import { PhotoThumb } from '../photos/photo-thumb.tsx'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './finding-form.module.css'
import { FormSection } from './form-section.tsx'
import { PhotoPicker } from './photo-picker.tsx'
import type { FindingForm } from './use-finding-form.ts'

type Attached = Finding['photos'][number]

const roles = photoRoleSchema.options.map((key) => ({ key, label: photoRoleLabels[key] }))

interface PhotosSectionProps {
  readonly form: FindingForm
  readonly lackingRoles: readonly PhotoRole[]
}

/** The photos that show the finding, and the part each plays. */
export function PhotosSection({ form, lackingRoles }: PhotosSectionProps) {
  const { draft, change } = form
  const { photos } = useJob()
  const [picking, setPicking] = useState(false)
  const byId = photosById(photos)
  const set = (next: readonly Attached[]) => change({ photos: [...next] })
  function attach(ids: readonly PhotoId[]) {
    setPicking(false)
    set(ids.map((photoId) => attachedAs(photoId, { draft: draft.photos, byId })))
  }
  return (
    <FormSection id="photos" title="Photos">
      <ul className={styles['photos']}>
        {draft.photos.map((attached) => (
          <AttachedPhoto
            key={attached.photoId}
            photo={byId.get(attached.photoId) ?? null}
            attached={attached}
            onRole={(role) =>
              set(draft.photos.map((other) => (other.photoId === attached.photoId ? { ...other, role } : other)))
            }
            onRemove={() => set(draft.photos.filter((other) => other.photoId !== attached.photoId))}
          />
        ))}
      </ul>
      {lackingRoles.length === 0 ? null : (
        <p className={styles['lack']}>
          Still wanted: {lackingRoles.map((role) => photoRoleLabels[role].toLowerCase()).join(', ')}.
        </p>
      )}
      <div className={styles['line']}>
        <Button onPress={() => setPicking(true)} isDisabled={photos.length === 0}>
          Pick photos…
        </Button>
        <Checkbox isSelected={draft.showsPoorly} onChange={(showsPoorly) => change({ showsPoorly })}>
          Shows poorly in the picture
        </Checkbox>
      </div>
      {picking ? (
        <PhotoPicker
          facetId={draft.facetId}
          chosen={draft.photos.map(({ photoId }) => photoId)}
          onChosen={attach}
          onClose={() => setPicking(false)}
        />
      ) : null}
    </FormSection>
  )
}

/** A photo keeps the role it has on the finding, else takes the one it is tagged with. */
function attachedAs(
  photoId: PhotoId,
  known: { readonly draft: readonly Attached[]; readonly byId: ReadonlyMap<PhotoId, Photo> },
): Attached {
  const before = known.draft.find((attached) => attached.photoId === photoId)
  return before ?? { photoId, role: known.byId.get(photoId)?.tags.role ?? 'other' }
}

interface AttachedPhotoProps {
  readonly photo: Photo | null
  readonly attached: Attached
  readonly onRole: (role: PhotoRole) => void
  readonly onRemove: () => void
}

function AttachedPhoto({ photo, attached, onRole, onRemove }: AttachedPhotoProps) {
  const name = photo === null ? 'a photo that is gone' : photoLabel(photo.number)
  return (
    <li className={styles['photo']}>
      <span className={styles['photoPicture']}>{photo === null ? null : <PhotoThumb photo={photo} />}</span>
      <span className={styles['photoHead']}>
        <strong>{name}</strong>
        <IconButton icon="close" label={`Take ${name} off the finding`} onPress={onRemove} />
      </span>
      <SelectField
        label={`Part that ${name} plays`}
        hideLabel
        options={roles}
        value={attached.role}
        onChange={(role) => {
          if (role !== null) onRole(role)
        }}
      />
    </li>
  )
}
