import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../../tests/builders/case-file.ts'
import { hipHouse } from '../../../tests/builders/hip-house.ts'
import { aPricedScope } from '../../../tests/builders/priced-scope.ts'
import { aFinding, aJob } from '../../../tests/builders/records.ts'
import { packetProblems } from '../coverage.ts'

const problemsOf = (scope: Parameters<typeof aPricedScope>[0]) =>
  packetProblems(
    aCaseFile({
      job: aJob(),
      facets: hipHouse(),
      findings: [aFinding({ number: 7, condition: 'missing', extent: { kind: 'several' } })],
      scope: aPricedScope(scope),
    }),
  ).filter(({ place }) => place.kind === 'scope')

describe('an offered scope', () => {
  it('tells what has to be counted first and what has no price', () => {
    expect(problemsOf({}).map(({ weight, sentence }) => [weight, sentence])).toEqual([
      [
        'notice',
        'Scope: one line has no quantity yet. Replace field tiles, not counted: Count first: F-7 gives no count.',
      ],
      ['notice', 'Scope: 2 lines have no price.'],
    ])
  })

  it('tells of changes whose line is gone', () => {
    const changes = [{ bid: 'repair', key: 'replace-hip-tile', leftOutBecause: 'Not ours.' }]
    expect(problemsOf({ changes }).map(({ id }) => id)).toContain('scope-change:scope')
  })

  it('has its words looked at: what a contractor may not say is pointed out', () => {
    const changes = [{ bid: 'replacement', key: 'eave', leftOutBecause: 'The insurer must pay for it.' }]
    const [first] = problemsOf({ changes })
    expect(first).toMatchObject({ weight: 'mend', id: 'wording:scope:scope' })
  })

  it('is not looked at until it is offered', () => {
    expect(problemsOf({ isOffered: false })).toEqual([])
  })
})
