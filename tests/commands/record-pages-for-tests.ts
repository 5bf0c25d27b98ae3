import {describe, expect, test} from 'vitest'
import {runBuild} from '../../src/commands/build.ts'
import {checkAndCompute} from '../../src/commands/run-stages.ts'
import {contentHashOf} from '../../src/issues/approval-state.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {issue, optionsOf, program, sign} from './issues-for-tests.ts'
import {renderedContent} from './rendered-content.ts'

/** Files of the small vessel as text. */
export async function textsOf(content: ChangedContent): Promise<ReadonlyMap<string, string>> {
  const {vessels} = await renderedContent(content.folder)
  const decoder = new TextDecoder()
  return new Map((vessels.get('vessel-s') ?? []).map(({path, bytes}) => [path, decoder.decode(bytes)]))
}

/** The tables of a record page, a line for each row. */
export async function rowsOf(page: string, content: ChangedContent): Promise<readonly string[]> {
  const text = (await textsOf(content)).get(page) ?? ''
  return [...text.matchAll(/<tr>(.*?)<\/tr>/gu)].map(([, row = '']) =>
    row
      .split(/<\/t[hd]>/u)
      .map((cell) => cell.replace(/<[^>]*>/gu, ''))
      .filter((cell) => cell !== '')
      .join(' | '),
  )
}

/** Paths that one of two publications alone holds, or whose bytes differ. */
export function pathsChanged(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
): readonly string[] {
  return [...new Set([...before.keys(), ...after.keys()])].filter(
    (path) => after.get(path) !== before.get(path),
  )
}

/** A record goes on between issues: a line in it, and a second one, move its own pages and nothing that anybody signs. */
export function describeNewLines(
  what: string,
  pages: readonly string[],
  {
    one,
    two,
  }: {readonly one: (content: ChangedContent) => void; readonly two: (content: ChangedContent) => void},
): void {
  describe(`a new line of ${what}`, () => {
    test('changes the record pages alone, and no hash that anybody signs', () =>
      withChangedContent(async (content) => {
        const bare = await checkAndCompute(content.folder)
        const without = await textsOf(content)
        one(content)
        const first = await textsOf(content)
        two(content)
        const second = await textsOf(content)
        for (const [before, after] of [
          [without, first],
          [first, second],
        ] as const) {
          expect([...after.keys()]).toEqual([...before.keys()])
          expect(pathsChanged(before, after)).toEqual(pages)
        }
        const {hashes} = await checkAndCompute(content.folder)
        expect(contentHashOf(hashes)).toBe(contentHashOf(bare.hashes))
      }, smallContent))

    test('leaves an issue the same issue, as no other change does', () =>
      withChangedContent(async (content) => {
        await sign(content, '2031-01-02')
        expect((await issue(content, '2031-01', '2031-01-10')).exitStatus).toBe(0)
        one(content)
        expect((await runBuild(optionsOf(content), async () => program)).out).toContain(
          'vessel-s: issue 2031-01 again, byte for byte\n',
        )
        content.replace('designs/design-s.yaml', '186 kg', '187 kg')
        expect((await runBuild(optionsOf(content), async () => program)).out).toContain(
          'vessel-s: not the bytes of issue 2031-01',
        )
      }, smallContent))
  })
}
