import {describe, expect, test} from 'vitest'
import {type PlanShape, tankPlan} from '../../src/figures/tank-plan.ts'

const tanks: readonly PlanShape[] = [
  {id: '4p', tag: '4P', left: 10, right: 20, top: 50, bottom: 100, address: 'p/4p/index.html'},
  {id: '4s', tag: '4S', left: 10, right: 20, top: 0, bottom: 50, address: 'p/4s/index.html'},
  {id: 'slop-s', tag: 'SLOP S', left: 80, right: 90, top: 0, bottom: 50},
]

/** Numbers of an attribute, in the order of the tanks. */
const numbersOf = (svg: string, name: string): readonly number[] =>
  [...svg.matchAll(new RegExp(`<rect [^>]*?\\b${name}="([\\d.]+)"`, 'gu'))].map(([, number]) =>
    Number(number),
  )

describe('the large plan', () => {
  const {svg, alternative} = tankPlan({tanks, name: 'plan', small: false})

  test('leads from each tank with a pump to its page, and from no other', () => {
    expect(
      [...svg.matchAll(/<a [^>]*href="([^"]*)" aria-label="([^"]*)"/gu)].map(([, ...rest]) => rest),
    ).toEqual([
      ['p/4p/index.html', 'Pump 4P'],
      ['p/4s/index.html', 'Pump 4S'],
    ])
  })

  test('lays the tanks out as the vessel file says: length, order and side', () => {
    const [portX, starboardX, slopX] = numbersOf(svg, 'x')
    const [portY, starboardY] = numbersOf(svg, 'y')
    expect(portX).toBe(starboardX)
    expect(slopX).toBeGreaterThan(starboardX ?? 0)
    expect(starboardY).toBeLessThan(portY ?? 0)
    expect(numbersOf(svg, 'width')).toEqual([100, 100, 100])
    expect(numbersOf(svg, 'height')).toEqual([108, 108, 108])
  })

  test('names every tank, in the drawing and in its text alternative', () => {
    for (const {tag} of tanks) expect(alternative).toContain(tag)
    expect(svg).toContain(`aria-label="${alternative}"`)
    expect(svg.replace(/<[^>]*>/gu, '')).toBe('4P4SSLOPS')
  })

  test('presses a word into a tank that is narrower, and no other', () => {
    const narrow = [
      {id: 'slop-p', tag: 'SLOP P', left: 94, right: 98.4, top: 50, bottom: 100},
      {id: '9s', tag: '9S', left: 80, right: 84.4, top: 0, bottom: 50},
    ]
    const drawn = tankPlan({tanks: narrow, name: 'plan', small: false}).svg
    const words = [...drawn.matchAll(/<tspan ([^>]*)>([^<]*)</gu)].map(([, how = '', word]) => [
      word,
      /textLength="([\d.]+)" lengthAdjust="spacingAndGlyphs"/u.exec(how)?.[1],
    ])
    expect(words).toEqual([
      ['SLOP', '36'],
      ['P', undefined],
      ['9S', undefined],
    ])
    expect(svg).not.toContain('textLength')
  })

  test('marks no tank when none is asked for', () => {
    expect(svg).not.toContain('plan-marked')
    expect(svg).not.toContain('url(#')
  })
})

describe('the small plan', () => {
  const {svg, alternative} = tankPlan({tanks, marked: '4s', name: 'small-plan', small: true})

  test('marks one tank by a hatch and a heavy outline, not by colour alone', () => {
    expect(svg.match(/plan-marked/gu)).toHaveLength(1)
    expect(svg).toMatch(/<rect class="plan-tank plan-marked"[^>]*style="fill:url\(#small-plan-hatch\)"/u)
    expect(svg).toContain('<pattern id="small-plan-hatch"')
  })

  test('draws the other tanks in a path before the marked one and a path behind it, each in its own place', () => {
    expect([...svg.matchAll(/<path class="plan-tank" d="([^"]*)"|<rect /gu)].map(([, path]) => path)).toEqual(
      ['M190 120h100v108h-100z', undefined, 'M890 12h100v108h-100z'],
    )
  })

  test('names the marked tank alone and leads nowhere', () => {
    expect(svg.replace(/<[^>]*>/gu, '')).toBe('4S')
    expect(alternative).toBe('Tank plan, bow to the left, port side below; tank 4S is marked.')
    expect(svg).not.toContain('<a ')
  })
})

test('a tag and an address are escaped, for a plan is printed as it is', () => {
  const {svg} = tankPlan({
    tanks: [{id: 'a', tag: '<b>"&\'', left: 0, right: 9, top: 0, bottom: 9, address: 'a.html?"b'}],
    name: 'plan',
    small: false,
  })
  expect(svg).not.toContain('<b>')
  expect(svg).not.toContain('"b"')
  expect(svg).toContain('&lt;b&gt;&quot;&amp;')
})
