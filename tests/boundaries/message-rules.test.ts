import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {severities} from '../../src/messages/severities.ts'
import {repository, sourceFiles} from './source-files.ts'

const developers = readFileSync(join(repository, 'DEVELOPERS.md'), 'utf8')
const ids = Object.keys(severities)

describe('every rule', () => {
  test('has a paragraph in DEVELOPERS.md, and every such paragraph a rule', () => {
    const described = [...developers.matchAll(/^### `?(no-[a-z-]+)`?\n+(\S.*)$/gmu)]
    expect(described.map((match) => match[1]).sort()).toEqual([...ids].sort())
    for (const match of described) expect((match[2] ?? '').length, match[1]).toBeGreaterThan(30)
  })

  test('is spoken by some stage', () => {
    const text = sourceFiles
      .filter((file) => file.path !== 'src/messages/severities.ts')
      .map((file) => file.text)
      .join('\n')
    expect(ids.filter((id) => !text.includes(`'${id}'`))).toEqual([])
  })

  test('has an id that says what is refused', () => {
    for (const id of ids) expect(id).toMatch(/^no(-[a-z]+)+$/u)
  })
})
