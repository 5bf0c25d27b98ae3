import type {Figure} from '../figures/figure.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {Page, Picture, ProcedurePage} from '../handbook-model/pages.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'

/** A figure as a file that pages share. Its name holds its content: a page whose drawing is gone shows words, never another drawing. */
export function pictureOf(kind: string, {svg, width, height, size, alternative}: Figure): Picture {
  return {
    path: `figures/${kind}-${technicalHash(svg).slice(0, 8)}.svg`,
    svg,
    width,
    height,
    size,
    alternative,
  }
}

/** The files of all pictures of pages, each once. */
export function pictureFiles(pages: readonly Page[]): HandbookPages['figures'] {
  const pictures = pages.flatMap((page) => [
    ...(page.head.position?.plan ? [page.head.position.plan] : []),
    ...(page.kind === 'position' && page.stack ? [page.stack.picture] : []),
    ...(page.kind === 'procedure' ? picturesOfSteps(page) : []),
  ])
  return [...new Map(pictures.map(({path, svg}) => [path, {path, svg}])).values()]
}

function picturesOfSteps({sections}: ProcedurePage): readonly Picture[] {
  return sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) => (part.kind === 'figure' ? [part.figure.picture] : []))
        : [],
    ),
  )
}
