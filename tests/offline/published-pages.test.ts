import {readdirSync, readFileSync} from 'node:fs'
import {dirname, join, normalize} from 'node:path'
import {FileSystemConfigLoader, HtmlValidate} from 'html-validate'
import {beforeAll, describe, expect, test} from 'vitest'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import {filesBelow, publishedFolder, textOf} from './odd-folder.ts'
import {linksAndIds, visibleText} from './visible-text.ts'

const paths = filesBelow(publishedFolder)
const pages = paths.filter((path) => path.endsWith('.html'))
const parsed = new Map(pages.map((path) => [path, linksAndIds(textOf(path))]))

describe('the published handbook', () => {
  test('has a page for each procedure of a pump on each of twenty pumps', () => {
    const procedures = readdirSync('content/procedures').filter((name) =>
      /^scope: position$/mu.test(readFileSync(join('content/procedures', name), 'utf8')),
    )
    expect(procedures.length).toBeGreaterThanOrEqual(7)
    for (const name of procedures) {
      const page = `/${name.replace('.md', '.html')}`
      expect(
        pages.filter((path) => path.startsWith('p/') && path.endsWith(page)),
        name,
      ).toHaveLength(20)
    }
  })

  test('resolves every link, also to the element named', () => {
    const dead: string[] = []
    for (const [path, {links}] of parsed) {
      for (const link of links) {
        const [file = '', fragment] = link.split('#')
        const target = file === '' ? path : normalize(`${dirname(path)}/${decodeURIComponent(file)}`)
        if (!paths.includes(target)) dead.push(`${path}: ${link}`)
        else if (fragment !== undefined && !parsed.get(target)?.ids.includes(fragment))
          dead.push(`${path}: ${link} has no such element`)
      }
    }
    expect(dead).toEqual([])
  })

  test('holds no id twice on a page', () => {
    for (const [path, {ids}] of parsed)
      expect(
        ids.filter((id, index) => ids.indexOf(id) !== index),
        path,
      ).toEqual([])
  })

  test('shows no `undefined`, `NaN` or `[object` anywhere', () => {
    for (const path of paths.filter((one) => /\.(html|txt|svg)$/u.test(one))) {
      const text = path.endsWith('.html') ? visibleText(textOf(path)) : textOf(path)
      expect(/\bundefined\b|\bNaN\b|\[object/u.exec(text)?.[0], path).toBeUndefined()
    }
  })

  test('holds only plain files with small names, and no page over 150 kB', () => {
    for (const path of paths) {
      expect(path).toMatch(/^[a-z0-9/-]+\.(html|css|js|svg|json|txt)$/u)
      expect(path.length).toBeLessThanOrEqual(100)
      if (path.endsWith('.html')) expect(Buffer.byteLength(textOf(path)), path).toBeLessThanOrEqual(150_000)
    }
  })
})

describe('technical texts', () => {
  const texts = new Map<string, {readonly path: string; readonly text: string}>()
  beforeAll(async () => {
    const {content, values, ledgers} = await checkAndCompute('content')
    if (!content || !values)
      throw new Error('Unexpected content with errors, expected the demonstration to check')
    const stated = stateVessel(content, values, 'vessel-a', ledgers)
    for (const page of stated.pages.pages)
      texts.set(page.head.id, {path: page.head.path, text: stated.technicalTexts.get(page.head.id) ?? ''})
  })

  test('stand line by line and in order in the visible text of their page', () => {
    expect(texts.size).toBeGreaterThan(160)
    for (const [id, {path, text}] of texts) {
      const visible = visibleText(textOf(path))
      let from = 0
      const lines = text.trimEnd().split('\n')
      expect(lines.length, id).toBeGreaterThan(3)
      for (const line of lines) {
        const words = line.split('\t')[2] ?? ''
        const at = visible.indexOf(words, from)
        expect(
          at === -1 ? `${id}: ${line}` : '',
          `after: ${visible.slice(Math.max(0, from - 80), from + 160)}`,
        ).toBe('')
        from = at + words.length
      }
    }
  })
})

test('every page passes the HTML validator', async () => {
  const validator = new HtmlValidate(
    new FileSystemConfigLoader({
      root: true,
      extends: ['html-validate:standard'],
      rules: {
        'long-title': 'off',
        'no-inline-style': 'off',
        'tel-non-breaking': 'off',
        'no-implicit-button-type': 'error',
        'doctype-style': 'off',
        'prefer-native-element': 'off',
        'require-sri': 'off',
        'no-trailing-whitespace': 'off',
        'attribute-boolean-style': 'off',
        'void-style': 'off',
      },
    }),
  )
  const faults: string[] = []
  for (const path of pages) {
    const report = await validator.validateString(textOf(path))
    for (const result of report.results)
      for (const one of result.messages)
        if (one.severity === 2) faults.push(`${path}:${one.line}:${one.column} ${one.ruleId} ${one.message}`)
  }
  expect([...new Set(faults)].slice(0, 20)).toEqual([])
})
