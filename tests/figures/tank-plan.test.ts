import {describe, expect, test} from 'vitest'
import {planWordsEn} from '../../src/compile/figure-words-en.ts'
import {markedPlan, type PlanShape, tankPlan} from '../../src/figures/tank-plan.ts'
import {expectRoomForTexts} from './room-for-texts.ts'
import {textsOf} from './svg-for-tests.ts'

const port: PlanShape = {
  id: '4p',
  tag: '4P',
  left: 10,
  right: 20,
  top: 50,
  bottom: 100,
  address: 'p/4p/index.html',
}
const starboard: PlanShape = {...port, id: '4s', tag: '4S', top: 0, bottom: 50, address: 'p/4s/index.html'}
const slop: PlanShape = {id: 'slop-s', tag: 'SLOP S', left: 80, right: 90, top: 0, bottom: 50}
const tanks = [port, starboard, slop]

describe('the large plan', () => {
  const {svg, alternative} = tankPlan({tanks, words: planWordsEn})

  test('leads from each tank with a pump to its page, and from no other', () => {
    expect(
      [...svg.matchAll(/<a [^>]*href="([^"]*)" aria-label="([^"]*)"/gu)].map(([, ...rest]) => rest),
    ).toEqual([
      ['p/4p/index.html', 'Pump 4P'],
      ['p/4s/index.html', 'Pump 4S'],
    ])
  })

  test('lays the tanks out as the vessel file says: length, order and side', () => {
    expect([...svg.matchAll(/<path class="plan-tank" d="([^"]*)"/gu)].map(([, path]) => path)).toEqual([
      'M190 120h100v108h-100z',
      'M190 12h100v108h-100z',
      'M890 12h100v108h-100z',
    ])
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
    const drawn = tankPlan({tanks: narrow, words: planWordsEn}).svg
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
})

describe('the small plan', () => {
  const {svg, alternative} = markedPlan(tanks, starboard, planWordsEn)

  test('marks one tank by a hatch, a heavy outline and its tag, not by colour alone', () => {
    expect(svg.match(/class="tank-marked"/gu)).toHaveLength(1)
    expect(svg).toMatch(/<path class="tank-marked" fill="url\(#h\)" d="M190 152h100v108h-100z/u)
    expect(svg).toContain('<pattern id="h"')
    expect(svg).toContain('.tank-marked{stroke:#000;stroke-width:11}')
  })

  test('draws each other tank in its own place', () => {
    expect(/<path class="tanks" d="([^"]*)"/u.exec(svg)?.[1]).toBe(
      'M190 260h100v108h-100zM890 152h100v108h-100z',
    )
  })

  test('names the marked tank alone, on its side of the hull, and leads nowhere', () => {
    const [tag] = textsOf(svg)
    const [below] = textsOf(markedPlan(tanks, port, planWordsEn).svg)
    expect([tag?.text, below?.text]).toEqual(['4S', '4P'])
    expect(tag?.bottom).toBeLessThan(144)
    expect(below?.top).toBeGreaterThan(140 + 236)
    expect(alternative).toBe('Tank plan, bow to the left, port side below; tank 4S is marked.')
    expect(svg).not.toContain('<a ')
  })

  test('has room for its tag at both ends of the ship, on paper and with a long tag', () => {
    for (const place of [
      {left: 0, right: 4},
      {left: 96, right: 100},
    ])
      for (const top of [0, 50])
        expectRoomForTexts(
          markedPlan([], {id: 'a', tag: 'SLOP P', top, bottom: top + 50, ...place}, planWordsEn),
        )
  })

  test('marks no tank for a pump that hangs in none', () => {
    const none = markedPlan(tanks, undefined, planWordsEn)
    expect(none.alternative).toBe('Tank plan, bow to the left, port side below; no tank is marked.')
    expect(none.svg).not.toContain('class="tank-marked"')
  })
})

test('a tag and an address are escaped, for a plan is printed as it is', () => {
  const odd = {id: 'a', tag: '<b>"&\'', left: 0, right: 9, top: 0, bottom: 9, address: 'a.html?"b'}
  for (const {svg} of [tankPlan({tanks: [odd], words: planWordsEn}), markedPlan([odd], odd, planWordsEn)]) {
    expect(svg).not.toContain('<b>')
    expect(svg).not.toContain('"b"')
    expect(svg).toContain('&lt;b&gt;&quot;&amp;')
  }
})
