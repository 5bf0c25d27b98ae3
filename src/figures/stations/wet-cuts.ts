import {ringSeat} from '../section/levels.ts'
import {type CutDesk, pieces, type StationCut} from './cut.ts'

/** Wear rings in their seats, impeller, sleeve and the seat of the cargo seal. */
export const wetCuts = {
  'lower-ring': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const ring = ringSeat(g.lowerRing, at)
    return {
      part: 'suction-cover',
      outlines: pieces(desk, 'suction-cover: cover', 'lower-ring: ring'),
      box: {
        left: ring.inside - at.wall * 2.2,
        right: ring.flange + at.wall * 2,
        low: at.eye - at.wall * 1.4,
        high: at.lowerRingTop + at.wall * 0.9,
      },
      turned: false,
      seenFrom: 'motor',
      surface: {r: ring.inside, from: at.eye, to: at.lowerRingTop + 2},
      circles: [{r: ring.flange}, {r: ring.outside, hidden: true}, {r: ring.inside}],
    }
  },
  'upper-ring': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const ring = ringSeat(g.upperRing, at)
    return {
      part: 'casing',
      outlines: pieces(desk, 'casing: volute', 'upper-ring: ring'),
      box: {
        left: ring.inside - at.wall * 2.2,
        right: ring.flange + at.wall * 2,
        low: at.casingWall - at.wall * 0.7,
        high: at.collarTop + at.wall * 1.6,
      },
      turned: true,
      seenFrom: 'suction',
      surface: {r: ring.inside, from: at.casingWall, to: at.collarTop},
      circles: [{r: ring.flange}, {r: ring.outside, hidden: true}, {r: ring.inside}],
    }
  },
  eye: (desk: CutDesk): StationCut => {
    const {g, at} = desk
    return {
      ...impeller(desk),
      surface: {r: g.lowerRing / 2, from: at.eye, to: at.lowerRingTop + 1},
      circles: [{r: at.impeller}, {r: g.lowerRing / 2}, {r: g.eyeDiameter / 2}],
    }
  },
  back: (desk: CutDesk): StationCut => {
    const {g, at} = desk
    return {
      ...impeller(desk),
      surface: {r: g.upperRing / 2, from: at.back, to: at.collarTop},
      circles: [{r: at.impeller}, {r: g.upperRing / 2, hidden: true}],
    }
  },
  'eye-run-out': (desk: CutDesk): StationCut => wetCuts.eye(desk),
  sleeve: (desk: CutDesk): StationCut => {
    const {g, at} = desk
    return {
      ...sleeve(desk),
      // The lines of the lips lie where their seat is.
      surface: {r: at.sleeveRadius, from: at.housing, to: at.housing + g.cargoSeat},
    }
  },
  'sleeve-run-out': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const wetLip = at.housing + g.cargoSeat * 0.2
    return {...sleeve(desk), surface: {r: at.sleeveRadius, from: wetLip, to: wetLip}}
  },
  'sleeve-end': (desk: CutDesk): StationCut => {
    const {at} = desk
    const whole = sleeve(desk)
    return {
      ...whole,
      box: {
        ...whole.box,
        low: at.sleeveEnd - at.wall * 2.6,
        high: at.hubSeat + at.wall,
        right: at.sleeveRadius + at.wall * 2.4,
      },
      turned: false,
      surface: {r: (at.hub + at.sleeveRadius) / 2, from: at.hubSeat, to: at.sleeveEnd},
      seenFrom: 'motor',
      circles: [{r: at.sleeveRadius}, {r: (at.hub + at.sleeveRadius) / 2}, {r: at.hub}],
      dimension: at.sleeveRadius,
    }
  },
  'cargo-seal': (desk: CutDesk): StationCut => {
    const {g, at, outlines} = desk
    const lips = outlines.filter(({piece}) => /^lip \d+$/u.test(piece))
    const rim = at.cargoSeatRadius - (at.cargoSeatRadius - at.sleeveRadius) * 0.12
    return {
      part: 'seal-housing',
      outlines: [...pieces(desk, 'cargo-seal: seal housing'), ...lips],
      box: {
        left: at.sleeveRadius - at.wall * 1.2,
        right: at.housingSpigot + at.wall * 1.6,
        low: at.housing - at.wall * 1.8,
        high: at.housing + g.cargoSeat + at.wall,
      },
      turned: true,
      seenFrom: 'suction',
      surface: {r: rim, from: at.housing, to: at.housing + (g.cargoSeat / Math.max(1, lips.length)) * 0.06},
      circles: [{r: at.housingSpigot}, {r: at.cargoSeatRadius}, {r: rim}, {r: at.sleeveRadius}],
      dimension: at.sleeveRadius,
    }
  },
} as const satisfies Record<string, (desk: CutDesk) => StationCut>

type Part = Omit<StationCut, 'surface' | 'circles'>

/** Half of the impeller, eye up as it stands on its stand. */
function impeller(desk: CutDesk): Part {
  const {at} = desk
  return {
    part: 'impeller',
    outlines: pieces(desk, 'impeller: vane', 'impeller: front shroud', 'impeller: back shroud and hub'),
    box: {
      left: 0,
      right: at.impeller + at.wall * 0.4,
      low: at.eye - at.wall * 0.6,
      high: at.collarTop + at.wall * 1.6,
    },
    turned: true,
    seenFrom: 'suction',
  }
}

/** Half of the hub with its sleeve, below the back of the impeller. */
function sleeve(desk: CutDesk): Omit<StationCut, 'surface'> {
  const {g, at} = desk
  const collar = at.sleeveRadius + g.bolts['sleeve-screws'].thread * 2
  return {
    part: 'sleeve',
    outlines: pieces(desk, 'impeller: back shroud and hub', 'sleeve: sleeve'),
    box: {
      left: at.hub * 0.55,
      right: collar + at.wall * 1.6,
      low: at.back - at.shroud * 2,
      high: at.housing + g.cargoSeat + at.wall * 3,
    },
    turned: true,
    seenFrom: 'suction',
    circles: [{r: collar, hidden: true}, {r: at.sleeveRadius}, {r: at.hub, hidden: true}],
  }
}
