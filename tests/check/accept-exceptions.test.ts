import {describe, expect, test} from 'vitest'
import {type ChangedContent, errorsAfter, smallContent} from '../commands/changed-content.ts'

const procedure = 'procedures/ring-check.md'
const note = 'The locking plates are bent up afterwards.'
const hedge = 'A plate that may break is replaced.'

function withException(more: Readonly<Record<string, string>> = {}): (content: ChangedContent) => void {
  const fields = {
    rule: 'no-hedge',
    file: procedure,
    words: 'may break',
    reason: 'words of the regulation',
    'reviewed-by': 'approving-superintendent',
    ...more,
  }
  const lines = Object.entries(fields).map(([key, value]) => `${key}: ${value}`)
  return (content) => {
    content.replace(procedure, note, hedge)
    content.write('exceptions.yaml', `exceptions:\n  - {${lines.join(', ')}}\n`)
  }
}

describe('a reviewed exception', () => {
  test('takes the weight off the message and says the reason and who reviewed it', async () => {
    const {exitStatus, errors, said} = await errorsAfter(withException(), smallContent)
    expect(errors).toEqual([])
    expect(exitStatus).toBe(0)
    expect(said).toMatch(/ring-check\.md:\d+:4 information Unexpected hedge `may`.* no-hedge\n/u)
    expect(said).toContain('mend: Accepted: words of the regulation (approving-superintendent)\n')
  })

  test.each<[string, Readonly<Record<string, string>>, string]>([
    ['for other words covers nothing', {words: 'may bend'}, 'no-idle-exception'],
    ['for another file covers nothing', {file: 'procedures/other.md'}, 'no-idle-exception'],
    ['for another rule covers nothing', {rule: 'no-contraction'}, 'no-idle-exception'],
    ['by someone who may not review is refused', {'reviewed-by': 'pump-author'}, 'no-undefined-reference'],
    ['from a rule of safety is refused', {rule: 'no-late-caution'}, 'no-wrong-shape'],
  ])('%s', async (_what, more, rule) => {
    const {exitStatus, errors} = await errorsAfter(withException(more), smallContent)
    expect(exitStatus).toBe(1)
    expect(errors.some((line) => line.endsWith(` ${rule}`))).toBe(true)
  })
})
