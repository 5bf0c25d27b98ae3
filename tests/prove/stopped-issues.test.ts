import {expect, test} from 'vitest'
import {stopIssues} from '../commands/issues-for-tests.ts'

test('an issue that is stopped at any call of the disk is the one before or this one, and whole again after the next command', async () => {
  const {found, stops} = await stopIssues(() => true)
  expect(found).toEqual(['2031-01', '2031-02'])
  expect(stops).toBeGreaterThan(60)
}, 400_000)
