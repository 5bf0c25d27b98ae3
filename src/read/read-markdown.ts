import remarkDirective from 'remark-directive'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import type {MarkdownSource} from '../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {readYaml} from './read-yaml.ts'

const processor = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  .use(remarkGfm)
  .use(remarkDirective)
  .freeze()

/** Reads Markdown with front matter into a tree with places of the whole file; each file is parsed once for the whole fleet. */
export function readMarkdown(path: string, text: string, files: ContentFiles): MarkdownSource | undefined {
  const tree = processor.parse(text)
  const place = {path, line: 1, column: 1}
  const [first] = tree.children
  if (first?.type !== 'yaml') {
    addMessage(
      files,
      place,
      'no-markdown-fault',
      'Unexpected start of the procedure, expected front matter between `---` lines',
      {
        note: 'Begin the file with a line `---`, then the fields, then a line `---`',
      },
    )
    return undefined
  }
  return {frontMatter: readYaml(path, first.value, files, 2), tree, place}
}
