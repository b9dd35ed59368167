import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readingChoicesSchema } from '../../app/weather/reading-choices.ts'
import { openTestDesk } from '../../tests/library/a-desk.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()

it('takes a kept station file by stated choices, bad rows only when told, and undoes it in one step', async () => {
  const desk = openTestDesk(scratch('library'))
  const path = join(scratch('files'), 'pier.csv')
  // A byte order mark, semicolons and decimal commas, as some archives write; one row is damaged.
  const rows = ['time;from;mean;gust', '2026-11-04 20:00;200;12,5;19,0', '2026-11-04 21:00;210;eleven;20,0']
  writeFileSync(path, `\uFEFF${rows.join('\r\n')}\r\n`)
  const jobId = await desk.newJob()
  await desk.takeIn(jobId, path)
  const attachmentId = (await desk.ask('jobs.open', { jobId })).attachments[0]?.id
  if (attachmentId === undefined) throw new Error('The file was not kept.')
  const choices = readingChoicesSchema.parse({
    unit: 'm/s',
    stationCode: 'PIER',
    hasDecimalComma: true,
    columns: { time: 'time', direction: 'from', mean: 'mean', gust: 'gust' },
  })
  const file = { jobId, attachmentId, choices, provenance: 'Made for this test' }
  const reading = await desk.ask('weather.read-file', { jobId, attachmentId, choices })
  expect([reading.total, reading.problems[0]?.line]).toEqual([1, 3])
  await expect(desk.ask('weather.take-file', file)).rejects.toThrow("1 rows of pier.csv can't be read.")
  await desk.ask('weather.take-file', { ...file, withoutBadRows: true })
  const { weather, attachments } = await desk.ask('jobs.open', { jobId })
  expect(weather.stations.map(({ code }) => code)).toEqual(['PIER'])
  expect(weather.sources[0]).toMatchObject({ sha256: attachments[0]?.file.sha256, leftOut: 1 })
  expect(weather.sources[0]?.observations[0]?.gustKt).toBeCloseTo(36.93, 2)
  await desk.ask('history.undo', { jobId })
  expect((await desk.ask('jobs.open', { jobId })).weather).toMatchObject({ stations: [], sources: [] })
  await desk.close()
})
