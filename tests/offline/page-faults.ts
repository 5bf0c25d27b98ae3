import {dirname, normalize} from 'node:path'
import {FileSystemConfigLoader, HtmlValidate} from 'html-validate'
import {visibleText} from './visible-text.ts'

/** Links of a page that lead to no file of its handbook, or to no element of it. `idsOf` gives undefined where there is no such file. */
export function deadLinks(
  path: string,
  links: readonly string[],
  idsOf: (path: string) => readonly string[] | undefined,
): readonly string[] {
  return links.flatMap((link) => {
    const [file = '', fragment] = link.split('#')
    const target = file === '' ? path : normalize(`${dirname(path)}/${decodeURIComponent(file)}`)
    const ids = target.startsWith('..') ? undefined : idsOf(target)
    if (!ids) return [`${path}: ${link}`]
    return fragment === undefined || ids.includes(fragment) ? [] : [`${path}: ${link} has no such element`]
  })
}

/** Ids that stand twice on a page. */
export function doubledIds(ids: readonly string[]): readonly string[] {
  return ids.filter((id, index) => ids.indexOf(id) !== index)
}

/** Words of the program that no reader should meet. */
export function strayWords(text: string): readonly string[] {
  return [...text.matchAll(/\bundefined\b|\bNaN\b|\[object/gu)].map((match) => match[0])
}

/** Lines of a page's technical text that do not stand in its visible text behind the line before. */
export function linesNotShown(technicalText: string, html: string): readonly string[] {
  const visible = visibleText(html)
  let from = 0
  return technicalText
    .trimEnd()
    .split('\n')
    .filter((line) => {
      const words = line.split('\t')[2] ?? ''
      const at = visible.indexOf(words, from)
      if (at !== -1) from = at + words.length
      return at === -1 || words === ''
    })
}

/** What is wrong with the name or the size of a published file. */
export function fileFaults(path: string, bytes: number): readonly string[] {
  return [
    ...(/^[a-z0-9/-]+\.(html|css|js|svg|json|txt)$/u.test(path) ? [] : ['name']),
    ...(path.length <= 100 ? [] : ['path over 100 characters']),
    ...(!path.endsWith('.html') || bytes <= 150_000 ? [] : [`page of ${bytes} bytes`]),
  ]
}

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

/** What the HTML validator refuses on a page. */
export async function validatorFaults(html: string): Promise<readonly string[]> {
  const {results} = await validator.validateString(html)
  return results.flatMap(({messages}) =>
    messages
      .filter((one) => one.severity === 2)
      .map((one) => `${one.line}:${one.column} ${one.ruleId} ${one.message}`),
  )
}
