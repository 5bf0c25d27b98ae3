import type {Figure} from '../figures/figure.ts'
import {
  type PortableParts,
  portableArrangement,
  undrawnArrangement,
} from '../figures/portable/portable-arrangement.ts'
import {
  misfitOf,
  type PortableGeometry,
  type PortablePart,
  portableParts,
} from '../figures/portable/portable-geometry.ts'
import type {Arrangement} from '../handbook-model/pages.ts'
import {portableDimensions, portableLengths, portableValueIds} from '../handbook-model/portable-lengths.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {filesOfValue} from './made-from.ts'
import {pictureOf} from './picture.ts'
import {portableWordsEn} from './portable-words-en.ts'
import {valueLine} from './value-line.ts'
import {standing} from './variant.ts'

/** Kind by which the file of the drawing is named. */
const kind = 'portable-arrangement'

/** Part of the parts list that gives each numbered part of the arrangement its balloon. */
const partOfBalloon: Readonly<Record<PortablePart, string>> = {
  strainer: 'portable-strainer',
  impeller: 'portable-impeller',
  seals: 'portable-seals',
  'leak-plug': 'leak-plug-ring',
  motor: 'portable-motor',
  couplings: 'coupling-rings',
  'oil-hoses': 'portable-oil-hose-pair',
  frame: 'portable-control-frame',
  'cargo-hose': 'portable-cargo-hose',
  'discharge-piece': 'discharge-piece-set',
  'leg-bolts': 'tripod-leg-bolts',
  chain: 'portable-chain-set',
}

/** Ids of the values whose figures stand in the drawing. */
export const portableFigureValues: readonly string[] = Object.values(portableDimensions)

/** The arrangement of a portable pump for its page, or nothing where its design does not state what it is drawn from. */
export function arrangementOf(desk: PumpDesk): Arrangement | undefined {
  if (!portableValueIds.every((id) => desk.values.has(id))) return undefined
  const {figure, parts, lengths} = drawn(desk)
  return {
    picture: pictureOf(kind, figure),
    lengths,
    values: portableFigureValues.map((id) => valueLine(pumpValue(desk, id), desk)),
    numbers: numbersOf(parts),
  }
}

/** The same for a step of a procedure: numbers and titles stand in its data. */
export function portableFigure(desk: PumpDesk): Figure {
  return drawn(desk).figure
}

/** Paths of the files that the arrangement on the page of a pump is made from. */
export function filesOfArrangement(desk: PumpDesk): readonly string[] {
  if (!arrangementOf(desk)) return []
  return [
    ...portableParts.flatMap((part) => desk.content.parts.get(partOfBalloon[part])?.place.path ?? []),
    ...portableValueIds.flatMap((id) => filesOfValue(pumpValue(desk, id), desk)),
  ]
}

function drawn(desk: PumpDesk): {
  readonly figure: Figure
  readonly parts: PortableParts
  readonly lengths: string
} {
  const parts = partsOf(desk)
  const told = Object.values(portableLengths).map(
    (id) => `${portableWordsEn.short[id]} ${printedValue(pumpValue(desk, id))}`,
  )
  const lengths = portableWordsEn.lengths(told.join('; '))
  const {geometry, missing} = geometryOf(desk)
  const misfit = geometry && misfitOf(geometry)
  if (!geometry || misfit)
    return {
      figure: undrawnArrangement({
        reason: misfit ? portableWordsEn.misfit[misfit] : portableWordsEn.notKnown(missing.join(', ')),
        parts,
        lengths,
      }),
      parts,
      lengths,
    }
  const printed = (of: keyof typeof portableDimensions): string =>
    printedValue(pumpValue(desk, portableDimensions[of]))
  return {
    figure: portableArrangement({
      geometry,
      figures: {
        headHeight: printed('headHeight'),
        hatchLeast: printed('hatchLeast'),
        hatchMost: printed('hatchMost'),
        depthMost: printed('depthMost'),
        footDistance: printed('footDistance'),
        oilHoseLength: printed('oilHoseLength'),
        hoseSetLength: printed('hoseSetLength'),
        pumpLength: printed('pumpLength'),
        pumpDiameter: printed('pumpDiameter'),
      },
      parts,
      words: portableWordsEn,
      lengths,
    }),
    parts,
    lengths,
  }
}

/** Balloon of each part that the list of this pump has, with the titles of everything that the list gives this number. */
function partsOf(desk: PumpDesk): PortableParts {
  const listed = [...desk.content.parts.values()].filter(({when}) => standing(when, desk).stands)
  return Object.fromEntries(
    portableParts.flatMap((part) => {
      const named = listed.find(({id}) => id === partOfBalloon[part])
      if (named?.balloon === undefined) return []
      const others = listed.filter((one) => one !== named && one.balloon === named.balloon)
      const titles = [named, ...others].map(({title}) => title.en)
      return [[part, {balloon: named.balloon, title: titles.join(', ')}]]
    }),
  )
}

function numbersOf(parts: PortableParts): Arrangement['numbers'] {
  return portableParts.flatMap((part) => {
    const one = parts[part]
    return one ? [one] : []
  })
}

/** The lengths in millimetres, or the titles of those that nobody knows. */
function geometryOf(desk: PumpDesk): {
  readonly geometry?: PortableGeometry
  readonly missing: readonly string[]
} {
  const missing: string[] = []
  const length = (id: string): number => {
    const {title, result} = pumpValue(desk, id)
    if (result.kind === 'known' && result.quantity?.kind === 'length') return valueIn(result.quantity, 'mm')
    missing.push(title)
    return Number.NaN
  }
  const geometry: PortableGeometry = {
    pumpDiameter: length(portableDimensions.pumpDiameter),
    pumpLength: length(portableDimensions.pumpLength),
    hatchLeast: length(portableDimensions.hatchLeast),
    hatchMost: length(portableDimensions.hatchMost),
    headHeight: length(portableDimensions.headHeight),
    footDistance: length(portableDimensions.footDistance),
    strainerDiameter: length(portableLengths.strainerDiameter),
    strainerHeight: length(portableLengths.strainerHeight),
    impellerDiameter: length(portableLengths.impellerDiameter),
    impellerOutlet: length(portableLengths.impellerOutlet),
    eyeDiameter: length(portableLengths.eyeDiameter),
    casingHeight: length(portableLengths.casingHeight),
    chamberHeight: length(portableLengths.chamberHeight),
    motorDiameter: length(portableLengths.motorDiameter),
    motorHeight: length(portableLengths.motorHeight),
    shaftDiameter: length(portableLengths.shaftDiameter),
    shaftOffset: length(portableLengths.shaftOffset),
    pipeOutside: length(portableLengths.pipeOutside),
    flangeDiameter: length(portableLengths.flangeDiameter),
    hoseBore: length(portableLengths.hoseBore),
    hoseOutside: length(portableLengths.hoseOutside),
    pressureBore: length(portableLengths.pressureBore),
    returnBore: length(portableLengths.returnBore),
    bendRadius: length(portableLengths.bendRadius),
    footCircle: length(portableLengths.footCircle),
    legDiameter: length(portableLengths.legDiameter),
  }
  return missing.length === 0 ? {geometry, missing} : {missing}
}
