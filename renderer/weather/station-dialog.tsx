import { useState } from 'react'
import type { WeatherStation } from '../../app/weather/weather-records.ts'
import { useEdit } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './weather.module.css'

/** What is known of a station beside its reports. */
export function StationDialog({ station, onClose }: { station: WeatherStation; onClose: () => void }) {
  const edit = useEdit()
  const [draft, setDraft] = useState(station)
  const [latDeg, setLat] = useState(station.position?.latDeg ?? null)
  const [lonDeg, setLon] = useState(station.position?.lonDeg ?? null)
  const save = async () => {
    const { id, ...rest } = draft
    const position = latDeg === null || lonDeg === null ? null : { latDeg, lonDeg }
    if ((await edit('weather.save-station', { id, station: { ...rest, position } })) !== null) onClose()
  }
  return (
    <Dialog
      title={`Station ${station.code}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void save()}>
            Save
          </Button>
        </>
      }
    >
      <div className={styles['fields']}>
        <TextField label="Name" value={draft.name} onChange={(name) => setDraft({ ...draft, name })} />
        <NumberField label="Latitude" unit="°" min={-90} max={90} value={latDeg} onChange={setLat} />
        <NumberField label="Longitude" unit="°" min={-180} max={180} value={lonDeg} onChange={setLon} />
        <NumberField
          label="Elevation"
          unit="ft"
          value={draft.elevationFt}
          onChange={(elevationFt) => setDraft({ ...draft, elevationFt })}
        />
        <NumberField
          label="Instrument above ground"
          unit="ft"
          min={0.1}
          max={2000}
          value={draft.anemometerHeightFt}
          onChange={(anemometerHeightFt) => setDraft({ ...draft, anemometerHeightFt })}
        />
      </div>
      <TextArea label="Note" value={draft.note} onChange={(note) => setDraft({ ...draft, note })} />
    </Dialog>
  )
}
