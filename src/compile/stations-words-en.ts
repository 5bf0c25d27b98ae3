import type {RigWords} from '../figures/stations/rig-figure.ts'
import type {CutPlace} from '../figures/stations/station-cuts.ts'
import type {StationWords} from '../figures/stations/stations-figure.ts'
import type {StationKind} from '../handbook-model/station-places.ts'

/** English words of the figures of stations. */
export const stationsWordsEn = {
  drawing: {
    suctionSide: 'suction side',
    noSection: 'Section NOT KNOWN: a length of this part is not stated. The view has no scale.',
    alternative: (parts) =>
      `Left a section of the part, right ${parts.length > 1 ? 'a view' : 'the view'} along its axis${parts.length > 1 ? ' for each reading' : ''}. ${parts.join('. ')}.`,
  } satisfies StationWords,
  parts: {
    'lower-ring': 'suction cover, ring side up',
    'upper-ring': 'casing, suction side up',
    eye: 'impeller, eye up',
    back: 'impeller, eye up',
    'eye-run-out': 'impeller, eye up',
    sleeve: 'hub with its sleeve, eye up',
    'sleeve-run-out': 'hub with its sleeve, eye up',
    'sleeve-end': 'hub with its sleeve, hub seat up',
    'cargo-seal': 'seal housing, wet face up',
    'single-lip': 'lip holder, motor side down',
    hub: 'hub below the shaft flange, gap drawn wider',
    'head-flange': 'seal housing below the motor flange, gap drawn wider',
    'motor-joint': 'motor below the foot of the stack, gap drawn wider',
    'shaft-reach': 'shaft flange below the foot of the motor',
    'oil-seal-length': 'shaft end with the rotating part',
    'oil-seal-seat': 'stationary part in the foot of the motor',
    'shaft-run-out': 'shaft at the oil seal',
    'flange-run-out': 'shaft flange on the shaft',
    'foot-seat': 'shaft with both bearing seats',
    'top-seat': 'shaft with both bearing seats',
    'foot-bore': 'bearing housing',
    'top-bore': 'bearing cover',
  } satisfies Record<CutPlace, string>,
  rig: {
    relief: 'own relief valve',
    ventValve: 'vent valve, closed; hose to the open deck',
    shutOff: 'shut-off valve, closed',
    regulator: 'own regulator',
    gasHose: 'gas hose off',
    topPlate: 'top plate',
    gaugeCock: 'gauge cock, capped',
    cofferdam: 'cofferdam',
    deck: 'deck',
    container: 'container',
    notKnown: 'NOT KNOWN',
    seenFrom: 'seen from aft',
  } satisfies RigWords,
  /** The rig while the pressure is held. */
  rigTold: (facts: {
    readonly points: {
      readonly supply: string
      readonly relief: string
      readonly vent: string
      readonly outlet: string
    }
    readonly stations: readonly string[]
    readonly instruments: readonly string[]
  }): string => {
    const {points} = facts
    return [
      `Test rig on the flange of ${points.relief}`,
      'from the cofferdam on: test gauge, own relief valve, vent valve closed, shut-off valve closed, own regulator, gas hose off',
      `vent line ${points.vent}, behind it ${points.outlet}`,
      `purge supply ${points.supply}`,
      'gauge cock closed and capped',
      `stations ${facts.stations.map((name, index) => `${index + 1} ${name}`).join(', ')}, seen from aft`,
      ...facts.instruments,
    ].join('; ')
  },
  rigView: 'Lines of the test rig above the top plate, below it the stack through the deck',
  noPoint: 'none',
  seenFrom: {suction: 'seen from the suction side', motor: 'seen from the motor side'},
  counts: {1: 'degrees with the clock', '-1': 'degrees against the clock'},
  /** What the drawing shows of a reading, in one line. */
  told: (facts: {
    readonly title: string
    readonly part: string
    readonly kind: StationKind
    readonly count: number
    readonly planes: readonly string[]
    readonly directions: readonly string[]
    readonly seenFrom: string
    readonly counts: string
    readonly instrument: string
  }): string => {
    const {kind, count, planes, directions} = facts
    const named = planes.filter((plane) => plane !== '')
    return [
      `${facts.title} (${facts.part}): ${count} ${count === 1 ? 'station' : 'stations'}`,
      ...(named.length > 0 ? [`planes ${named.join(', ')} from the suction side on`] : []),
      ...(kind === 'dial'
        ? ['dial set at 0°, part turned once round']
        : [`${kind === 'bore' || kind === 'outside' ? 'diameters' : 'places'} at ${directions.join(', ')}`]),
      ...(directions.length > 1 ? [`${facts.counts}, ${facts.seenFrom}`] : [facts.seenFrom]),
      facts.instrument,
    ].join('; ')
  },
  stations: (names: readonly string[]): string =>
    `stations in the order of the boxes ${names.map((name, index) => `${index + 1} ${name}`).join(', ')}`,
}
