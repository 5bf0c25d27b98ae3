import {looksOf, partsOfSection, type SectionPart, type SectionVariant} from './section-geometry.ts'

/** Words of a cross-section in one language. */
export interface SectionWords {
  readonly view: string
  readonly cut: string
  readonly order: string
  readonly ringFit: Readonly<Record<'screwed' | 'pressed' | 'not-known', string>>
  readonly lips: (count: number) => string
  readonly lip: (place: string, looks: 'down' | 'up', faces: 'cargo' | 'cofferdam' | 'oil') => string
  readonly places: readonly [wet: string, second: string]
  readonly singleLip: string
  readonly details: Readonly<
    Record<
      'cargo' | 'oil',
      {readonly letter: string; readonly title: string; readonly above: string; readonly below: string}
    >
  >
  readonly detail: (letter: string, title: string, below: string, above: string) => string
}

/** What the words of a section are made from. */
export interface SectionTold {
  readonly variant: SectionVariant
  /** Balloon of each part by the parts list, and the name that the text alternative gives it. */
  readonly parts: Readonly<Partial<Record<SectionPart, {readonly balloon: string; readonly title: string}>>>
  readonly words: SectionWords
}

/** How the rings are held and which way the open edge of each lip looks, a sentence each. */
export function variantText({variant, words}: Omit<SectionTold, 'parts'>): readonly string[] {
  return [
    words.ringFit[variant.ringFit],
    words.lips(variant.cargoLips.length),
    ...variant.cargoLips.map((lip, index) =>
      words.lip(words.places[index] ?? words.places[1], looksOf(lip, 'cargo seal'), lip.faces),
    ),
    words.lip(words.singleLip, looksOf(variant.singleLip, 'single lip'), variant.singleLip.faces),
  ]
}

/** What the picture tells, in words: parts in their order with their numbers, direction of each lip, and what is cut. */
export function sectionText(input: SectionTold): string {
  const {variant, parts, words} = input
  const listed = partsOfSection(variant).flatMap((part) => {
    const one = parts[part]
    return one ? [`${one.balloon} ${one.title}`] : []
  })
  return [
    words.view,
    words.cut,
    `${words.order} ${listed.join(', ')}.`,
    ...variantText(input),
    ...Object.values(words.details).map(({letter, title, below, above}) =>
      words.detail(letter, title, below, above),
    ),
  ].join(' ')
}
