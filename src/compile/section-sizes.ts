import type {BoltId, RingId} from '../figures/section/section-geometry.ts'
import type {Field, ValueLine} from '../handbook-model/pages.ts'
import {type PumpDesk, pumpValue} from './desk.ts'
import {cargoSeal} from './section-of-pump.ts'
import {sectionWordsEn} from './section-words-en.ts'
import {valueLine} from './value-line.ts'
import {writtenDatum} from './written-datum.ts'

/** Lengths under `geometry` that a section is drawn from, the whole first, then from the wet end up. */
const geometryOfSection = [
  'unit-height',
  'casing-diameter',
  'suction-clearance',
  'impeller-diameter',
  'impeller-outlet',
  'eye-diameter',
  'hub-diameter',
  'sleeve-diameter',
  'spigot-bore',
  'spigot-offset',
  'motor-flange-diameter',
  'motor-diameter',
  'motor-height',
  'shaft-diameter',
  'shaft-reach',
  'foot-bearing-bore',
  'foot-bearing-outside',
  'foot-bearing-width',
  'top-bearing-bore',
  'top-bearing-outside',
  'top-bearing-width',
  'stack-diameter',
] as const

/** Joints whose bolts a section shows, and O-rings whose grooves it shows. */
const smallParts = {
  joints: [
    'suction-cover-bolts',
    'lower-ring-screws',
    'seal-housing-bolts',
    'sleeve-screws',
    'hub-bolts',
    'shaft-flange-bolts',
    'hand-hole-bolts',
    'head-flange-bolts',
    'lip-holder-bolts',
  ] satisfies readonly (Exclude<BoltId, 'ring-screws'> | 'lower-ring-screws')[],
  oRings: [
    'suction-cover-ring',
    'spigot-ring',
    'housing-ring',
    'sleeve-ring',
    'hand-hole-ring',
    'head-flange-ring',
    'lip-holder-ring',
  ] satisfies readonly RingId[],
}

/** The sizes that the section of a pump is drawn from, each with the way to its explanation. */
export function sectionSizes(desk: PumpDesk): readonly ValueLine[] {
  const seal = cargoSeal(desk.design, desk.facts.get('cargo-seal'))
  return [
    ...geometryOfSection.map((id) => `geometry.${id}`),
    'lower-ring.running-diameter',
    'upper-ring.running-diameter',
    ...(seal ? [`${seal.id}.seat-depth`] : []),
    'single-lip.seat-depth',
    'setting.sleeve-position-least',
    'setting.sleeve-position-most',
    'cofferdam.outer-pipe-bore',
    'cofferdam.inner-pipe-outside',
    'oil.return-pipe-bore',
    'oil.pressure-pipe-outside',
    'oil.pressure-pipe-bore',
  ].map((id) => valueLine(pumpValue(desk, id), desk))
}

/** The small parts that it is drawn from: bolts with thread and length, grooves of O-rings with the section of the ring. */
export function sectionSmallParts({design}: PumpDesk): readonly Field[] {
  return [
    {
      label: sectionWordsEn.smallParts.bolts,
      text: listed(
        smallParts.joints,
        design.joints,
        ({title, thread, length}) => `${title.en} ${thread.id} × ${writtenDatum(length)}`,
      ),
    },
    {
      label: sectionWordsEn.smallParts.grooves,
      text: listed(smallParts.oRings, design.oRings, ({title, grooveDiameter, section}) =>
        sectionWordsEn.smallParts.groove(title.en, writtenDatum(grooveDiameter), writtenDatum(section)),
      ),
    },
  ]
}

function listed<Part extends {readonly id: string}>(
  ids: readonly string[],
  parts: readonly Part[],
  words: (part: Part) => string,
): string {
  return ids.flatMap((id) => parts.filter((one) => one.id === id).map(words)).join('; ')
}
