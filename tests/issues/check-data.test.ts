import {describe, expect, test} from 'vitest'
import {checkDataOf} from '../../src/issues/check-data.ts'
import type {Ledger} from '../../src/issues/ledger.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {technicalHash} from '../../src/technical-text/technical-hash.ts'

const page = 'vessel-a/4s/wear'

/** Check data after two issues of one page with these texts, the last one with a code of its own. */
function differing(before: string, after: string): unknown {
  const ledgers = [before, after].map(
    (text, index): Ledger => ({
      version: 1,
      vessel: 'vessel-a',
      issue: `2031-0${index + 1}`,
      date: `2031-0${index + 1}-10`,
      asOf: `2031-0${index + 1}-10`,
      issuedBy: 'document-controller',
      toolVersion: '0.1.0',
      contentHash: technicalHash(''),
      manifestHash: technicalHash(''),
      sources: {},
      pages: {
        [page]: {
          revision: index + 1,
          date: `2031-0${index + 1}-10`,
          code: `code ${index + 1}`,
          hash: technicalHash(text),
          path: 'p/4s/wear.html',
        },
      },
    }),
  )
  const texts = new Map([before, after].map((text) => [technicalHash(text), text]))
  const files: ContentFiles = new Map()
  const data = checkDataOf({vessel: 'vessel-a', tags: {'4s': '4S'}, ledgers, texts}, files)
  expect(files.size).toBe(0)
  expect(data.pages['4s/wear']?.revisions.map(({code}) => code)).toEqual(['code 2', 'code 1'])
  const {values, others} = data.pages['4s/wear']?.revisions[1] ?? {}
  return {values, others}
}

describe('beside a revision that is not current stand', () => {
  test('figures, conditions and limits that the current one prints otherwise', () => {
    expect(
      differing(
        'hub.torque\tvalue\t61 N·m\nhub.torque\tcondition\twith paste\nrun-out\toutside\tWATCH\n',
        'hub.torque\tvalue\t78 N·m\nhub.torque\tcondition\twith oil\nrun-out\toutside\tRENEW\n',
      ),
    ).toEqual({
      values: [
        {value: 'hub.torque', sheet: '61 N·m', now: '78 N·m'},
        {value: 'hub.torque', sheet: 'with paste', now: 'with oil'},
        {value: 'run-out', sheet: 'WATCH', now: 'RENEW'},
      ],
      others: 0,
    })
  })

  test('a value that came, and one that went', () => {
    expect(differing('a.mass\tvalue\t8 kg\n', 'b.mass\tvalue\t9 kg\n')).toEqual({
      values: [
        {value: 'a.mass', sheet: '8 kg'},
        {value: 'b.mass', now: '9 kg'},
      ],
      others: 0,
    })
  })

  test('a step whose figure moved', () => {
    expect(differing('open\tstep\tLoosen 6 bolts.\n', 'open\tstep\tLoosen 8 bolts.\n')).toEqual({
      values: [{value: 'open', sheet: 'Loosen 6 bolts.', now: 'Loosen 8 bolts.'}],
      others: 0,
    })
  })

  test('a count of everything else', () => {
    expect(
      differing(
        'open\tstep\tOpen it.\ncaution-fall\thazard\tA fall.\n',
        'open\tstep\tOpen it slowly.\ncaution-fall\thazard\tA deep fall.\n',
      ),
    ).toEqual({values: [], others: 2})
  })
})
