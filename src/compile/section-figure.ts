import type {Content} from '../handbook-model/content.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import {onceForEach} from '../handbook-model/once-for-each.ts'
import type {SectionFigure} from '../handbook-model/pages.ts'
import type {PumpDesk} from './desk.ts'
import {drawingFile} from './picture.ts'
import {type PumpSection, sectionOfPump} from './section-of-pump.ts'
import {sectionSizes, sectionSmallParts} from './section-sizes.ts'

/** Sections that were drawn, by parts list, design and what is fitted: pumps alike share one. */
const sectionsOf = onceForEach((_parts: Content['parts']) =>
  onceForEach((_design: Design) => new Map<string, PumpSection | undefined>()),
)

/** The section of a pump for its page, or nothing where its design does not state what it is drawn from. */
export function sectionFigure(desk: PumpDesk): SectionFigure | undefined {
  const section = sharedSection(desk)
  return (
    section && {
      path: drawingFile('section', section.svg).path,
      width: section.frame.width,
      height: section.frame.height,
      alternative: section.alternative,
      numbers: section.legend.map(({balloon, title}) => ({balloon, title})),
      variant: section.variant,
      sizes: sectionSizes(desk),
      smallParts: sectionSmallParts(desk),
    }
  )
}

/** The sections of a vessel's pumps, each once. */
export function sectionFiles(desks: readonly PumpDesk[]): HandbookPages['figures'] {
  const sections = new Set(desks.flatMap((desk) => sharedSection(desk) ?? []))
  return [...sections].map(({svg}) => drawingFile('section', svg))
}

/** The section of a pump as it is fitted, drawn once for all pumps alike. */
export function sharedSection(desk: PumpDesk): PumpSection | undefined {
  const ofDesign = sectionsOf(desk.content.parts)(desk.design)
  const fitted = `${desk.facts.get('wear-ring-fit')} ${desk.facts.get('cargo-seal')}`
  if (!ofDesign.has(fitted)) ofDesign.set(fitted, sectionOfPump(desk))
  return ofDesign.get(fitted)
}
