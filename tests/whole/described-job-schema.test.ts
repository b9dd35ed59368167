import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { describedJobSchema } from '../../app/job/described-job.ts'

describe('the written form of job.json', () => {
  it('stands beside the sample job as JSON Schema, the same as the program checks', async () => {
    const schema = JSON.stringify(z.toJSONSchema(describedJobSchema, { io: 'input' }), null, 2)
    await expect(`${schema}\n`).toMatchFileSnapshot('../../sample-jobs/job.schema.json')
  })

  it('is described in words, every part of it', () => {
    const words = readFileSync('sample-jobs/job-json.md', 'utf8')
    for (const part of Object.keys(describedJobSchema.shape)) expect(words).toContain(`\`${part}\``)
    for (const field of Object.keys(describedJobSchema.shape.findings.unwrap().element.shape))
      expect(words).toContain(`\`${field}\``)
  })
})
