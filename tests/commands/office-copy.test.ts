import {expect, test} from 'vitest'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import type {ExplainedInput} from '../../src/handbook-model/pages.ts'
import {smallContent} from './changed-content.ts'

const {content, values, history} = await checkAndCompute(smallContent)
if (!content || !values) throw new Error('Unexpected errors in the small content, expected none')
const aboard = stateVessel(content, values, 'vessel-s', history)
const office = stateVessel(content, values, 'vessel-s', history, true)

function inputsOf({pages}: typeof aboard): readonly ExplainedInput[] {
  return pages.pages.flatMap((page) =>
    page.kind === 'explanations' ? page.values.flatMap((value) => [...value.inputs]) : [],
  )
}

test('a copy for the office names file and line of each input that the content states', () => {
  const utilisation = inputsOf(office).filter(({symbol, source}) => symbol === 'ν' && source > 0)
  expect(utilisation.length).toBeGreaterThan(0)
  for (const {writtenAt} of utilisation) expect(writtenAt).toMatch(/^designs\/design-s\.yaml:\d+$/u)
  expect(inputsOf(office).filter(({writtenAt, source}) => source > 0 && writtenAt === '')).toEqual([])
})

test('a copy for a ship names none', () => {
  expect(inputsOf(aboard).length).toBe(inputsOf(office).length)
  expect(inputsOf(aboard).filter(({writtenAt}) => writtenAt !== '')).toEqual([])
})

test('both copies have the same technical texts, and so the same check codes', () => {
  expect(office.technicalTexts).toEqual(aboard.technicalTexts)
})
