import type {Figure} from '../figures/figure.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {Page, Picture, ProcedurePage} from '../handbook-model/pages.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'

/** A figure as a file that pages share. Its name holds its content: a page whose drawing is gone shows words, never another drawing. */
export function pictureOf(kind: string, {svg, own, width, height, size, alternative}: Figure): Picture {
  return {
    ...drawingFile(kind, svg),
    ...(own === undefined ? {} : {own: drawingFile(`${kind}-words`, own)}),
    width,
    height,
    size,
    alternative,
  }
}

/** The file of a drawing, named by its content. */
export function drawingFile(kind: string, svg: string): HandbookPages['figures'][number] {
  return {path: `figures/${kind}-${technicalHash(svg).slice(0, 8)}.svg`, svg}
}

/** The files of all pictures of pages, each once. */
export function pictureFiles(pages: readonly Page[]): HandbookPages['figures'] {
  const files: HandbookPages['figures'] = pages.flatMap((page) => [
    ...filesOf(page.head.position?.plan),
    ...(page.kind === 'position' ? [page.arrangement, page.stack] : []).flatMap((one) =>
      filesOf(one?.picture),
    ),
    ...(page.kind === 'procedure' ? picturesOfSteps(page) : []),
    ...(page.kind === 'procedure' && page.touched ? [page.touched.marks] : []),
  ])
  return [...new Map(files.map(({path, svg}) => [path, {path, svg}])).values()]
}

function picturesOfSteps({sections}: ProcedurePage): HandbookPages['figures'] {
  return sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) => (part.kind === 'figure' ? filesOf(part.figure.picture) : []))
        : [],
    ),
  )
}

/** A drawing and the words that lie over it, where there are any. */
function filesOf(picture: Picture | undefined): HandbookPages['figures'] {
  return picture ? [picture, ...(picture.own ? [picture.own] : [])] : []
}
