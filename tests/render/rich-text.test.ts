import {describe, expect, test} from 'vitest'
import {richText} from '../../src/render/rich-text.ts'

describe('a bound text', () => {
  test('is escaped, whatever an author writes', () => {
    expect(richText([{kind: 'text', text: '<script>alert(1)</script> & more'}], '')).toBe(
      '&#x3C;script>alert(1)&#x3C;/script> &#x26; more',
    )
  })

  test('leads a value to its explanation, from the folder the page lies in', () => {
    const torque = {kind: 'value', text: '48 N·m', path: 'p/4s/values.html#torque', known: true} as const
    expect(richText([torque], '../../')).toBe(
      '<a class="figure-inline" href="../../p/4s/values.html#torque">48 N·m</a>',
    )
  })

  test('marks a value that is not known', () => {
    const gap = {kind: 'value', text: 'NOT KNOWN', path: 'a.html', known: false} as const
    expect(richText([gap], '')).toContain('class="figure-inline not-known"')
  })

  test('keeps the balloon of a part with the last of its words, its brackets for those who read no circle', () => {
    const part = {kind: 'part', text: 'lower wear ring', balloon: '4', part: 'lower-ring'} as const
    const balloon = '<span class="part">ring <b><i>(</i>4<i>)</i></b></span>'
    expect(richText([part], '')).toBe(`lower wear ${balloon}`)
    expect(richText([{kind: 'strong', children: [{...part, text: 'ring'}]}], '')).toBe(
      `<strong>${balloon}</strong>`,
    )
  })

  test('keeps emphasis around what stands in it, and escapes the address of a link', () => {
    const link = {kind: 'link', text: 'next', path: 'a.html"onclick="b'} as const
    expect(
      richText(
        [
          {kind: 'strong', children: [{kind: 'emphasis', children: [link]}]},
          {kind: 'text', text: '.'},
        ],
        '',
      ),
    ).toBe('<strong><em><a href="a.html&#x22;onclick=&#x22;b">next</a></em></strong>.')
  })
})
