import {describe, expect, test} from 'vitest'
import {checkAfter} from '../texts-for-tests.ts'

describe('units of the machine', () => {
  const units = (...ids: readonly string[]): string =>
    `units: [${ids.map((id) => `{id: ${id}, title: Unit ${id}, balloons: ["1", "2"]}`).join(', ')}]\nparts:`

  test('keep the order in which they are written', () => {
    const {data, messages} = checkAfter((texts) =>
      texts.replace('parts.yaml', 'parts:', units('wet-end', 'motor')),
    )
    expect(messages).toEqual([])
    expect(data.units).toMatchObject([
      {id: 'wet-end', title: {en: 'Unit wet-end'}, balloons: ['1', '2']},
      {id: 'motor'},
    ])
  })

  test('have an id each', () => {
    const {messages} = checkAfter((texts) => texts.replace('parts.yaml', 'parts:', units('motor', 'motor')))
    expect(messages).toHaveLength(1)
    expect(messages[0]).toContain('Unexpected second `motor`, expected each id once')
  })
})
