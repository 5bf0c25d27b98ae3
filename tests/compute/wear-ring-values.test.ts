import {describe, expect, test} from 'vitest'
import {diametralMillimetres, radialMillimetres} from '../../src/quantities/named-units.ts'
import {type Changes, computed, figureOf, notKnown, stated, unknownIn, valueIn} from './content-for-tests.ts'

const diametral = (value: number): ReturnType<typeof stated<'diametral-clearance'>> =>
  stated(diametralMillimetres(value), value.toFixed(2), 'mm diametral')
const radial = (value: number): ReturnType<typeof stated<'radial-clearance'>> =>
  stated(radialMillimetres(value), value.toFixed(2), 'mm radial')

function renewal(
  design: ReturnType<typeof diametral> | ReturnType<typeof radial>,
  house: typeof design,
): {readonly figure: string; readonly condition: string | undefined} {
  const {values} = computed({ring: {renewal: design}, house: {wearRingRenewal: house}})
  return {
    figure: figureOf(values, 'lower-ring.renewal'),
    condition: valueIn(values, 'lower-ring.renewal').condition,
  }
}

describe('the renewal clearance of a wear ring', () => {
  test('is that of the design where it is the smaller, and names the house rule', () => {
    expect(renewal(diametral(1.2), diametral(2))).toEqual({
      figure: '1.20 mm diametral',
      condition: 'the design governs; house rule 2.00 mm diametral, as built, source drawing, sheet 12',
    })
  })

  test('is the house rule where that is the smaller, and names the design', () => {
    expect(renewal(diametral(1.2), diametral(1.19))).toEqual({
      figure: '1.19 mm diametral',
      condition: 'the house rule governs; design 1.20 mm diametral, as built, source drawing, sheet 12',
    })
  })

  test('is that of the design where both are equal', () => {
    expect(renewal(diametral(1.2), diametral(1.2)).condition).toMatch(/^the design governs/u)
  })

  test('compares on the diameter what is stated on the radius', () => {
    expect(renewal(radial(0.7), diametral(1.2))).toMatchObject({
      figure: '1.20 mm diametral',
      condition: expect.stringMatching(/^the house rule governs; design 0\.70 mm radial/u),
    })
    expect(renewal(diametral(1.2), radial(0.5))).toMatchObject({
      figure: '1.00 mm diametral',
      condition: expect.stringMatching(/^the house rule governs/u),
    })
    expect(renewal(radial(0.5), radial(0.6))).toMatchObject({
      figure: '1.00 mm diametral',
      condition: expect.stringMatching(/^the design governs; house rule 0\.60 mm radial/u),
    })
  })

  test('is not known where the house rule is not known: the smaller of the two cannot be told', () => {
    const {values, said} = computed({house: {wearRingRenewal: notKnown('rule under review')}})
    expect(unknownIn(values)).toEqual(['lower-ring.renewal'])
    expect(said).toContain('house rule for the renewal clearance (rule under review)')
  })

  test('names a rule of common practice once, without the title of a source', () => {
    const rule = radial(0.5)
    const practice =
      rule.kind === 'known'
        ? {...rule, origin: {status: 'common-practice', source: 'drawing'} as const}
        : rule
    const {values} = computed({ring: {renewal: diametral(0.9)}, house: {wearRingRenewal: practice}})
    expect(valueIn(values, 'lower-ring.renewal').condition).toBe(
      'the design governs; house rule 0.50 mm radial, common practice, no source',
    )
  })

  test('explains itself by both limits and names both sources', () => {
    const {values} = computed({house: {wearRingRenewal: radial(1)}})
    const {calculation, sources} = valueIn(values, 'lower-ring.renewal')
    expect(calculation?.inputs.map(({printed}) => printed)).toEqual(['1.20 mm diametral', '1.00 mm radial'])
    expect(calculation?.steps.map(({printed}) => printed)).toEqual(['2.00 mm diametral'])
    expect(sources).toEqual([{source: 'drawing'}, {source: 'drawing', where: 'sheet 12'}])
  })
})

describe('what a ring states', () => {
  test('repeats the digits as written', () => {
    const {values} = computed({
      ring: {minimumNew: stated(diametralMillimetres(0.4), '0.400', 'mm diametral')},
    })
    expect(figureOf(values, 'lower-ring.minimum-new')).toBe('0.400 mm diametral')
    expect(figureOf(values, 'lower-ring.new')).toBe('0.50 mm diametral')
    expect(figureOf(values, 'lower-ring.running-diameter')).toBe('250 mm')
    expect(valueIn(values, 'lower-ring.new').rounding).toBe('as stated by the source')
  })

  test.each<[string, Changes['ring']]>([
    ['lower-ring.new', {newClearance: notKnown('sheet lost')}],
    ['lower-ring.minimum-new', {minimumNew: notKnown('sheet lost')}],
    ['lower-ring.running-diameter', {runningDiameter: notKnown('sheet lost')}],
    ['lower-ring.renewal', {renewal: notKnown('sheet lost')}],
  ])('leaves exactly %s not known when that alone is missing', (id, ring) => {
    const {values} = computed({ring: ring ?? {}})
    expect(unknownIn(values)).toEqual([id])
    expect(valueIn(values, id).result).toEqual({
      kind: 'not-known',
      missing: [expect.stringMatching(/of the lower ring \(sheet lost\)$/u)],
    })
  })
})
