import {hasPart} from '../conditions/has-part.ts'
import {partsOfBalloons, sectionOverlay} from '../figures/section/section-overlay.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import {onceForEach} from '../handbook-model/once-for-each.ts'
import type {
  BoundItem,
  BoundSection,
  BoundText,
  NumberedPart,
  PartLine,
  TouchedParts,
} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {found, type PumpDesk} from './desk.ts'
import {drawingFile} from './picture.ts'
import {sharedSection} from './section-figure.ts'
import type {PumpSection} from './section-of-pump.ts'
import {wordsEn} from './words-en.ts'

/** Marks that were drawn over a section, by the balloons that they ring: procedures that touch the same parts share them. */
const marksOf = onceForEach((_section: PumpSection) => new Map<string, HandbookPages['figures'][number]>())

/**
 * The section of a pump with the parts marked that a procedure touches: those that its steps and hold points point at, and
 * those of its parts list.
 *
 * Nothing where none of them is on the section, and on a page of the ship, whose pumps have several sections.
 */
export function touchedParts(
  procedure: Procedure,
  sections: readonly BoundSection[],
  parts: readonly PartLine[],
  desk: PumpDesk,
): TouchedParts | undefined {
  const section = procedure.scope === 'vessel' ? undefined : sharedSection(desk)
  if (!section) return undefined
  const touched = [
    ...parts.map(({id, balloon}) => ({id, balloon})).filter(({balloon}) => balloon !== ''),
    ...sections.flatMap(({items}) => items.flatMap(textsOf)).flatMap(partsIn),
  ]
  const balloons = new Set(touched.map(({balloon}) => balloon))
  const drawn = new Set(section.legend.map(({balloon}) => balloon))
  const numbers = section.legend
    .filter(({balloon}) => balloons.has(balloon))
    .map(({balloon, title}) => ({balloon, title}))
  if (numbers.length === 0) return undefined
  return {
    path: drawingFile('section', section.svg).path,
    width: section.frame.width,
    height: section.frame.height,
    marks: marksOver(section, numbers),
    alternative: wordsEn.touched.alternative(numbers.map(({balloon, title}) => `${balloon} ${title}`)),
    numbers,
    others: numberedOthers(
      touched.filter(({balloon}) => !drawn.has(balloon)),
      desk,
    ),
    drawnAs: procedure.scope === 'design' ? wordsEn.touched.drawnAs(desk.position.tag) : '',
  }
}

/** A part that is touched, by its id and its balloon. */
interface Touched {
  readonly id: string
  readonly balloon: string
}

function marksOver(section: PumpSection, numbers: readonly NumberedPart[]): HandbookPages['figures'][number] {
  const ofSection = marksOf(section)
  const balloons = new Set(numbers.map(({balloon}) => balloon))
  const key = [...balloons].join(' ')
  const known =
    ofSection.get(key) ?? drawingFile('marks', sectionOverlay(section, partsOfBalloons(section, balloons)))
  ofSection.set(key, known)
  return known
}

/** Parts that the section does not show, each balloon once with the titles of the parts as this pump has them. */
function numberedOthers(touched: readonly Touched[], desk: PumpDesk): readonly NumberedPart[] {
  const titles = new Map<string, Set<string>>()
  for (const {id, balloon} of touched)
    titles.set(balloon, (titles.get(balloon) ?? new Set()).add(titleOnPump(id, desk)))
  return [...titles]
    .sort(([a], [b]) => Number(a) - Number(b))
    .map(([balloon, names]) => ({balloon, title: [...names].join(', ')}))
}

/** What a part is called in the parts list of this pump: a part of another design by the one that it has in its place. */
function titleOnPump(id: string, desk: PumpDesk): string {
  const {parts} = desk.content
  const part = found(parts.get(id), `part ${id}`)
  if (hasPart(part, desk, desk.content)) return part.title.en
  const alike = [...parts.values()].filter(
    (one) => one.balloon === part.balloon && hasPart(one, desk, desk.content),
  )
  return (alike.find((one) => one.class === part.class) ?? alike[0] ?? part).title.en
}

function textsOf(item: BoundItem): readonly BoundText[] {
  if (item.kind === 'hold') return item.text
  return [
    item.instruction,
    ...item.parts.flatMap((part) => {
      if (part.kind === 'note') return [part.text]
      return part.kind === 'alternatives' ? part.items.map(({text}) => text) : []
    }),
  ]
}

function partsIn(text: BoundText): readonly Touched[] {
  return text.flatMap((inline) => {
    if (inline.kind === 'part') return [{id: inline.part, balloon: inline.balloon}]
    return inline.kind === 'strong' || inline.kind === 'emphasis' ? partsIn(inline.children) : []
  })
}
