import type {SectionPart} from '../figures/section/section-geometry.ts'
import type {SectionWords} from '../figures/section/section-text.ts'

/** English words of the cross-section. */
export const sectionWordsEn: SectionWords & {
  readonly parts: Readonly<Record<SectionPart, string>>
  /** Sizes of small parts in one line each. */
  readonly smallParts: {
    readonly bolts: string
    readonly grooves: string
    readonly groove: (title: string, diameter: string, section: string) => string
  }
} = {
  view: 'Section through the axis of the pump as it hangs in the tank, from the bottom of the well to the foot of the pipe stack, with the discharge branch turned into the plane of the section and the hand hole on the left.',
  cut: 'Cover, rings, impeller, casing, housings, flanges, motor body and pipes are cut and hatched; sleeve, lips and O-rings are cut and black; shaft, bolts, screws, balls and rollers are not cut.',
  order: 'Parts from the wet end up, by the numbers of the parts list:',
  ringFit: {
    screwed: 'Each wear ring is held by screws through its flange.',
    pressed: 'Each wear ring is pressed into its seat and has no screws.',
    'not-known': 'How the wear rings are held is NOT KNOWN: they are drawn without screws.',
  },
  lips: (count) => {
    if (count === 0) return 'What the cargo seal is like is NOT KNOWN: its seat is drawn empty.'
    if (count === 1) return 'The cargo seal has one lip.'
    return `The cargo seal has ${count === 2 ? 'two' : String(count)} lips.`
  },
  lip: (place, looks, faces) => `The open edge of the ${place} looks ${looks}, to the ${faces}.`,
  places: ['lip at the wet end', 'second lip'],
  singleLip: 'single lip below the motor',
  smallParts: {
    bolts: 'bolts and screws',
    grooves: 'grooves of O-rings',
    groove: (title, diameter, section) => `${title} ${diameter} for a section of ${section}`,
  },
  details: {
    cargo: {letter: 'X', title: 'the cargo seal on the sleeve', above: 'cofferdam', below: 'cargo'},
    oil: {letter: 'Y', title: 'the single lip and the mechanical oil seal', above: 'oil', below: 'cofferdam'},
  },
  detail: (letter, title, below, above) =>
    `Detail ${letter} shows ${title} larger, right of the axis, with the ${below} below and the ${above} above.`,
  parts: {
    'suction-cover': 'suction cover',
    'suction-cover-bolts': 'bolts of the suction cover',
    'suction-cover-ring': 'O-ring of the suction cover',
    'lower-ring': 'lower wear ring',
    'lower-ring-screws': 'screws of the lower wear ring',
    impeller: 'impeller with hub',
    'upper-ring': 'upper wear ring',
    'upper-ring-screws': 'screws of the upper wear ring',
    casing: 'pump casing',
    'spigot-ring': 'O-ring of the discharge spigot',
    'cargo-seal': 'cargo seal in the seal housing',
    sleeve: 'ceramic-coated sleeve',
    'hub-bolts': 'hub bolts',
    'shaft-flange': 'shaft flange',
    'hand-hole-ring': 'O-ring of the hand hole cover',
    'hand-hole-bolts': 'bolts of the hand hole cover',
    'head-flange-ring': 'O-ring of the motor flange',
    'head-flange-bolts': 'bolts of the motor flange',
    'oil-seal': 'mechanical oil seal with lip holder',
    motor: 'hydraulic motor',
    stack: 'foot of the pipe stack',
  },
}
