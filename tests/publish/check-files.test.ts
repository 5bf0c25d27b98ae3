import {describe, expect, test} from 'vitest'
import type {RenderedFile} from '../../src/handbook-model/files.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {checkFiles} from '../../src/publish/check-files.ts'

function messagesFor(files: readonly (readonly [path: string, size: number])[]): string {
  const rendered: readonly RenderedFile[] = files.map(([path, size]) => ({path, bytes: new Uint8Array(size)}))
  const messages: ContentFiles = new Map()
  checkFiles('vessel-a', rendered, messages)
  return printMessages(messages, 'content')
}

describe('files that may be published', () => {
  test.each([
    ['index.html', 1],
    ['p/4s/wear-rings.html', 150_000],
    ['assets/site.css', 1_000_000],
    ['assets/figure-1.svg', 1],
    ['data/words.json', 1],
    ['issue.txt', 0],
    [`${'a'.repeat(40)}.html`, 1],
  ])('accepts %s of %i bytes', (path, size) => {
    expect(messagesFor([[path, size]])).toBe('')
  })
})

describe('files that may not', () => {
  test.each([
    ['P/4s/rings.html', 'capitals'],
    ['p/4s/größe.html', 'letters beyond ASCII'],
    ['p/4s/a b.html', 'a blank'],
    ['p/../rings.html', 'a way out'],
    ['p//rings.html', 'an empty name'],
    ['/rings.html', 'a root'],
    ['p/4s/.hidden', 'a leading point'],
    ['assets/photo.png', 'a kind that mail gateways and old viewers do not all show'],
    ['p/4s/deep/rings.html', 'a third folder'],
    [`${'a'.repeat(41)}.html`, 'a name of 41 letters'],
  ])('refuses %s (%s)', (path) => {
    expect(messagesFor([[path, 1]])).toContain(
      `content/vessels/vessel-a/vessel.yaml:1:1 error Unexpected file name \`${path}\`, expected small letters`,
    )
  })

  test('refuses two names that differ by capitals only', () => {
    expect(
      messagesFor([
        ['p/4s.html', 1],
        ['p/4S.html', 1],
      ]),
    ).toContain(
      'Unexpected second file `p/4S.html` beside `p/4s.html`, expected names that differ by more than capitals',
    )
  })

  test('refuses a path of 101 characters', () => {
    const path = `${'a'.repeat(40)}/${'b'.repeat(40)}/${'c'.repeat(14)}.html`
    expect(messagesFor([[path, 1]])).toContain('of 101 characters, expected at most 100')
    expect(messagesFor([[path.replace('cc', 'c'), 1]])).toBe('')
  })

  test('refuses a page above 150 kB and any file above 1 MB, and says how to mend it', () => {
    const said = messagesFor([
      ['a.html', 150_001],
      ['b.js', 1_000_001],
    ])
    expect(said).toContain(
      'Unexpected size of 150001 bytes of `a.html`, expected at most 150000 no-heavy-page',
    )
    expect(said).toContain(
      'Unexpected size of 1000001 bytes of `b.js`, expected at most 1000000 no-heavy-page',
    )
    expect(said).toContain('mend: Split the procedure or the table')
  })
})
