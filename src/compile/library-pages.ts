import type {Content} from '../handbook-model/content.ts'
import type {Source} from '../handbook-model/office-content.ts'
import type {
  CautionsPage,
  PageLink,
  PartsPage,
  SourcesPage,
  ToolsPage,
  WordsPage,
} from '../handbook-model/pages.ts'
import {boundCaution, rankOfWord} from './caution-numbers.ts'
import {found, type PumpDesk} from './desk.ts'
import {
  cautionLink,
  cautionsPath,
  designPageOf,
  elementId,
  partsPath,
  sourceLink,
  sourcesPath,
  toolsPath,
  valueLink,
  wordsPath,
} from './page-paths.ts'
import {shipPageHead} from './ship-page-head.ts'
import {proceduresOf, proceduresUsing, stepsWithCaution} from './used-in.ts'
import {wordsEn} from './words-en.ts'
import {instrumentWords, toolSize} from './written-datum.ts'

function contentOf(desks: readonly PumpDesk[]): Content {
  return found(desks[0], 'a pump').content
}

/** Every caution of the handbook once, with each step that uses it. */
export function cautionsPage(desks: readonly PumpDesk[]): CautionsPage {
  const content = contentOf(desks)
  const used = [...content.cautions.values()].flatMap((caution) => {
    const usedIn = stepsWithCaution(caution.id, desks)
    return usedIn.length > 0 ? [{caution, usedIn}] : []
  })
  return {
    kind: 'cautions',
    head: shipPageHead(desks, 'cautions', cautionsPath, wordsEn.titles.cautions, [
      ...used.flatMap(({caution}) => [caution.place.path, sourceOf(caution.source.id, content).place.path]),
      ...filesOfProcedures(desks),
    ]),
    words: wordsEn.signalWords,
    cautions: [...used]
      .sort((a, b) => rankOfWord[a.caution.word] - rankOfWord[b.caution.word])
      .map(({caution, usedIn}, index) => ({
        caution: boundCaution(caution, index + 1),
        residualRisk: caution.residualRisk.en,
        source: sourceLink(caution.source.id, sourceOf(caution.source.id, content).title.en),
        usedIn,
      })),
  }
}

/** Tools that the procedures of this vessel use. */
export function toolsPage(desks: readonly PumpDesk[]): ToolsPage {
  const tools = [...contentOf(desks).tools.values()].flatMap((tool) => {
    const usedIn = proceduresUsing(
      (procedure) => procedure.tools.filter((one) => one.tool.id === tool.id),
      desks,
    )
    const instrument = tool.instrument ? instrumentWords(tool.instrument) : ''
    return usedIn.length > 0
      ? [{id: elementId('tool', tool.id), title: tool.title.en, size: toolSize(tool), instrument, usedIn}]
      : []
  })
  return {
    kind: 'tools',
    head: shipPageHead(
      desks,
      'tools',
      toolsPath,
      wordsEn.titles.tools,
      [...contentOf(desks).tools.values()].map((tool) => tool.place.path).concat(filesOfProcedures(desks)),
    ),
    tools,
  }
}

/** Spare parts and consumables that the procedures of this vessel use. */
export function partsPage(desks: readonly PumpDesk[]): PartsPage {
  const parts = [...contentOf(desks).parts.values()].flatMap((part) => {
    const usedIn = proceduresUsing(
      (procedure) => procedure.parts.filter((one) => one.part.id === part.id),
      desks,
    )
    return usedIn.length > 0
      ? [
          {
            id: elementId('part', part.id),
            title: part.title.en,
            size: part.size.en,
            class: wordsEn.partClasses[part.class],
            balloon: part.balloon ?? '',
            usedIn,
          },
        ]
      : []
  })
  return {
    kind: 'parts',
    head: shipPageHead(
      desks,
      'parts',
      partsPath,
      wordsEn.titles.parts,
      [...contentOf(desks).parts.values()].map((part) => part.place.path).concat(filesOfProcedures(desks)),
    ),
    parts,
  }
}

/** Sources that values and cautions of this vessel stand on. */
export function sourcesPage(desks: readonly PumpDesk[]): SourcesPage {
  const content = contentOf(desks)
  const inUse = [...content.cautions.values()].filter(
    (caution) => stepsWithCaution(caution.id, desks).length > 0,
  )
  const filesOfUse = [
    ...desks.map((desk) => desk.design.place.path),
    ...inUse.map((caution) => caution.place.path),
  ]
  const sources = [...content.sources.values()].flatMap((source) => {
    const ofValues = valuesOn(source.id, desks)
    const ofCautions = inUse
      .filter((caution) => caution.source.id === source.id)
      .map((caution) => cautionLink(caution.id, caution.title.en))
    return [
      {
        id: elementId('source', source.id),
        title: source.title.en,
        edition: source.edition,
        status: source.supersededBy
          ? wordsEn.supersededBy(sourceOf(source.supersededBy.id, content).title.en)
          : wordsEn.sourceStatus[source.status],
        howKnown: wordsEn.howKnown[source.howKnown],
        usedIn: [...ofValues, ...ofCautions],
      },
    ]
  })
  return {
    kind: 'sources',
    head: shipPageHead(
      desks,
      'sources',
      sourcesPath,
      wordsEn.titles.sources,
      [...content.sources.values()].map((source) => source.place.path).concat(filesOfUse),
    ),
    sources,
  }
}

/** One word for each thing. */
export function wordsPage(desks: readonly PumpDesk[]): WordsPage {
  const terms = [...contentOf(desks).terms.values()].map((term) => ({
    id: elementId('term', term.id),
    term: term.term.en,
    meaning: term.meaning.en,
    notUsed: term.notUsed,
  }))
  return {
    kind: 'words',
    head: shipPageHead(
      desks,
      'words',
      wordsPath,
      wordsEn.titles.words,
      [...contentOf(desks).terms.values()].map((term) => term.place.path),
    ),
    terms,
  }
}

/** Up to so many values of a source are linked one by one; of more, the pages that explain them. */
const mostLinked = 40

/** The values that stand on a source, each by the first pump that has it; where they are many, the pages that explain them with their count. */
function valuesOn(source: string, desks: readonly PumpDesk[]): readonly PageLink[] {
  const links = new Map<string, PageLink>()
  const pages = new Map<string, {readonly title: string; readonly count: number}>()
  for (const desk of desks) {
    for (const value of desk.values.values()) {
      if (links.has(value.id) || !value.sources.some((use) => use.source === source)) continue
      const link = valueLink(value, value.title, desk)
      links.set(value.id, link)
      pages.set(link.path, {
        title: value.ofDesign
          ? wordsEn.designPages[designPageOf(value.id)](desk.design.title.en)
          : wordsEn.titles.positionValues(desk.position.tag),
        count: (pages.get(link.path)?.count ?? 0) + 1,
      })
    }
  }
  if (links.size <= mostLinked) return [...links.values()]
  return [...pages].map(([path, {title, count}]) => ({text: wordsEn.valuesOnPage(title, count), path}))
}

function sourceOf(id: string, content: Content): Source {
  return found(content.sources.get(id), `source ${id}`)
}

function filesOfProcedures(desks: readonly PumpDesk[]): readonly string[] {
  return proceduresOf(desks).map((procedure) => procedure.place.path)
}
