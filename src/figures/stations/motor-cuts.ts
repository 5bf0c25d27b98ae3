import {bearingLevels} from '../section/motor-end.ts'
import {oilSealFace} from '../section/oil-seal.ts'
import {type CutDesk, moved, pieces, type StationCut} from './cut.ts'

/** Joints of hub, motor and stack, oil seal, shaft and bearing seats. */
export const motorCuts = {
  'single-lip': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const ring = g.rings['lip-holder-ring']
    const spigot = ring.groove / 2 + ring.section * 0.82
    const flange = spigot + g.bolts['lip-holder-bolts'].thread * 2.7
    const seat = at.sleeveRadius + g.sleeveDiameter * 0.13
    const low = at.unitFlange - (at.unitFlange - at.hubSeat) * 0.5
    const rim = seat - (seat - at.sleeveRadius) * 0.12
    return {
      part: 'lip-holder',
      outlines: pieces(desk, 'oil-seal: lip holder', 'oil-seal: single lip'),
      box: {
        left: at.sleeveRadius - at.wall,
        right: flange + at.wall * 0.8,
        low: low - at.wall * 1.8,
        high: at.unitFlange + ring.section * 3 + at.wall * 0.4,
      },
      turned: true,
      seenFrom: 'suction',
      surface: {r: rim, from: low, to: low + g.singleSeat * 0.06},
      circles: [{r: flange}, {r: seat}, {r: rim}, {r: at.sleeveRadius}],
      dimension: at.sleeveRadius,
    }
  },
  hub: (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const gap = at.wall * 0.5
    return {
      part: 'hub',
      outlines: [
        ...moved(pieces(desk, 'impeller: back shroud and hub'), -gap),
        ...pieces(desk, 'shaft-flange: flange'),
      ],
      box: {
        left: 0,
        right: at.hub + at.wall * 3,
        low: at.hubSeat - g.bolts['hub-bolts'].length * 0.5 - gap - at.wall,
        high: at.hubSeat + (at.unitFlange - at.hubSeat) * 0.5,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: at.hub, from: at.hubSeat - gap, to: at.hubSeat},
      circles: [{r: at.hub}, {r: g.shaftDiameter / 2, hidden: true}],
    }
  },
  'head-flange': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const flange = g.motorFlangeDiameter / 2
    const gap = at.wall * 0.7
    const bolt = g.bolts['head-flange-bolts']
    return {
      part: 'head-flange',
      outlines: [
        ...moved(pieces(desk, 'cargo-seal: seal housing'), -gap),
        ...pieces(desk, 'motor: bearing housing outside of the cofferdam'),
      ],
      box: {
        left: flange - at.wall * 7,
        right: flange + at.wall * 3,
        low: at.unitFlangeLow - gap - at.wall * 1.4,
        high: at.unitFlange + bolt.length * 0.62 + at.wall * 1.4,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: flange, from: at.unitFlange - gap, to: at.unitFlange},
      circles: [{r: flange}, {r: at.chamber, hidden: true}],
    }
  },
  'motor-joint': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const outside = g.motorDiameter / 2
    const gap = at.wall * 0.5
    return {
      part: 'motor-joint',
      outlines: [
        ...moved(pieces(desk, 'motor: motor body outside of the cofferdam'), -gap),
        ...pieces(desk, 'stack: outer pipe'),
      ],
      box: {
        left: g.stack.bore / 2 - at.wall,
        right: outside + at.wall * 2.4,
        low: at.foot - at.wall * 2.4,
        high: at.foot + g.stack.outside * 0.17 + at.wall * 1.4,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: outside, from: at.foot - gap, to: at.foot},
      circles: [{r: outside}, {r: g.stack.outside / 2, hidden: true}],
    }
  },
  'shaft-reach': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const ring = g.rings['lip-holder-ring']
    // The rod stands inside of the way of the cofferdam, outside of the bore for the lip holder.
    const inside = ring.groove / 2 + ring.section * 0.82
    const rod = (inside + g.motorDiameter / 2 - at.wall * 2.1) / 2
    return {
      part: 'shaft-flange',
      outlines: pieces(desk, 'motor: bearing housing', 'shaft-flange: flange'),
      box: {
        left: 0,
        right: rod + at.wall * 3.4,
        low: at.hubSeat - at.wall * 1.6,
        high: at.motor + ring.section * 3 + at.wall,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: rod, from: at.hubSeat, to: at.motor},
      circles: [{r: g.motorFlangeDiameter / 2}, {r: rod}, {r: at.hub}],
      dimension: at.hub,
    }
  },
  'oil-seal-length': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const face = at.unitFlange + oilSealFace(g)
    const end = shaftEnd(desk)
    const shaft = g.shaftDiameter / 2
    const back = face - g.shaftDiameter * 0.34
    const rod = shaft * 1.16
    return {
      part: 'oil-seal',
      outlines: pieces(desk, 'motor: shaft', 'oil-seal: rotating part', 'oil-seal: stationary part'),
      box: {left: 0, right: shaft * 2.1, low: end - at.wall * 1.6, high: face + g.shaftDiameter * 0.26},
      turned: false,
      seenFrom: 'suction',
      surface: {r: rod, from: end, to: back},
      circles: [{r: shaft * 1.32}, {r: rod}, {r: shaft}],
      dimension: shaft,
    }
  },
  'oil-seal-seat': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const ring = g.rings['lip-holder-ring']
    const face = at.unitFlange + oilSealFace(g)
    const edge = at.motor + ring.section * 3 + at.wall * 0.5
    const shaft = g.shaftDiameter / 2
    const seat = shaft * 1.32 + 3
    const rim = seat - at.wall * 0.2
    return {
      part: 'oil-seal-seat',
      outlines: pieces(desk, 'motor: shaft', 'motor: bearing housing', 'oil-seal: stationary part'),
      box: {
        left: 0,
        right: seat + at.wall * 3,
        low: at.motor - at.wall * 0.6,
        high: face + g.shaftDiameter * 0.3,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: rim, from: edge, to: face},
      circles: [{r: seat + at.wall * 2}, {r: seat}, {r: rim}, {r: shaft}],
      dimension: shaft,
    }
  },
  'shaft-run-out': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const shaft = g.shaftDiameter / 2
    const middle = at.unitFlange + oilSealFace(g) - g.shaftDiameter * 0.17
    return {
      part: 'shaft',
      outlines: pieces(desk, 'motor: shaft'),
      box: {
        left: 0,
        right: shaft * 2.6,
        low: shaftEnd(desk) - at.wall,
        high: bearingLevels(g, at).footLow + at.wall,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: shaft, from: middle, to: middle},
      circles: [{r: shaft}],
    }
  },
  'flange-run-out': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const high = at.hubSeat + (at.unitFlange - at.hubSeat) * 0.92
    const middle = at.hubSeat + (at.unitFlange - at.hubSeat) * 0.64
    return {
      part: 'shaft-flange',
      outlines: pieces(desk, 'shaft-flange: flange', 'motor: shaft'),
      box: {
        left: 0,
        right: at.sleeveRadius * 1.9,
        low: at.hubSeat - at.wall,
        high: high + g.shaftDiameter * 0.4,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r: at.sleeveRadius, from: middle, to: middle},
      circles: [{r: at.sleeveRadius}, {r: g.shaftDiameter / 2, hidden: true}],
    }
  },
  'foot-seat': (desk: CutDesk): StationCut => seat(desk, 'foot'),
  'top-seat': (desk: CutDesk): StationCut => seat(desk, 'top'),
  'foot-bore': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const {footLow, footHigh} = bearingLevels(g, at)
    const r = g.footBearing.outside / 2
    return {
      part: 'bearing-housing',
      outlines: pieces(desk, 'motor: bearing housing'),
      box: {
        left: r - at.wall * 3,
        right: r + at.wall * 1.6,
        low: footLow - at.wall * 1.4,
        high: footHigh + at.wall,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r, from: footLow, to: footHigh},
      circles: [{r: r + at.wall * 1.6}, {r}, {r: g.footBearing.bore / 2 + 4}],
    }
  },
  'top-bore': (desk: CutDesk): StationCut => {
    const {g, at} = desk
    const {topLow, topHigh, joint} = bearingLevels(g, at)
    const r = g.topBearing.outside / 2
    return {
      part: 'bearing-cover',
      outlines: pieces(desk, 'motor: bearing cover'),
      box: {
        left: r - at.wall * 3,
        right: r + at.wall * 1.6,
        low: topLow - at.wall * 1.2,
        high: joint + at.wall * 0.6,
      },
      turned: false,
      seenFrom: 'suction',
      surface: {r, from: topLow, to: topHigh},
      circles: [{r: g.footBearing.outside / 2}, {r}, {r: g.topBearing.bore / 2 + 6, hidden: true}],
    }
  },
} as const satisfies Record<string, (desk: CutDesk) => StationCut>

function shaftEnd({g, at}: CutDesk): number {
  const bolt = g.bolts['shaft-flange-bolts']
  return at.hubSeat + bolt.thread * 1.3 + bolt.length * 0.45
}

/** Half of the shaft with both bearing seats. */
function seat(desk: CutDesk, which: 'foot' | 'top'): StationCut {
  const {g, at} = desk
  const {footLow, footHigh, topLow, topHigh} = bearingLevels(g, at)
  const r = (which === 'foot' ? g.footBearing : g.topBearing).bore / 2
  return {
    part: 'shaft',
    outlines: pieces(desk, 'motor: shaft'),
    box: {
      left: 0,
      right: g.footBearing.outside / 2,
      low: footLow - at.wall * 1.6,
      high: topHigh + at.wall * 1.6,
    },
    turned: false,
    seenFrom: 'suction',
    surface: which === 'foot' ? {r, from: footLow, to: footHigh} : {r, from: topLow, to: topHigh},
    circles: [{r: g.footBearing.bore / 2 + 8}, {r}],
  }
}
