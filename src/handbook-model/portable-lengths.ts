/** Values of a design that the arrangement of a portable pump is drawn from; those of the first list carry a dimension. */
export const portableDimensions = {
  pumpLength: 'geometry.pump-length',
  pumpDiameter: 'geometry.pump-diameter',
  footDistance: 'setting.foot-distance',
  depthMost: 'setting.depth-most',
  hatchLeast: 'geometry.hatch-least',
  hatchMost: 'geometry.hatch-most',
  headHeight: 'geometry.head-height',
  hoseSetLength: 'geometry.hose-set-length',
  oilHoseLength: 'geometry.oil-hose-length',
} as const

/** Lengths that are told in words below the drawing. */
export const portableLengths = {
  strainerDiameter: 'geometry.strainer-diameter',
  strainerHeight: 'geometry.strainer-height',
  impellerDiameter: 'geometry.impeller-diameter',
  impellerOutlet: 'geometry.impeller-outlet',
  eyeDiameter: 'geometry.eye-diameter',
  casingHeight: 'geometry.casing-height',
  chamberHeight: 'geometry.leak-chamber-height',
  motorDiameter: 'geometry.motor-diameter',
  motorHeight: 'geometry.motor-height',
  shaftDiameter: 'geometry.shaft-diameter',
  shaftOffset: 'geometry.shaft-offset',
  pipeOutside: 'geometry.discharge-pipe-outside',
  flangeDiameter: 'geometry.discharge-flange-diameter',
  hoseBore: 'geometry.hose-bore',
  hoseOutside: 'geometry.hose-outside',
  pressureBore: 'geometry.pressure-hose-bore',
  returnBore: 'geometry.return-hose-bore',
  bendRadius: 'setting.bend-radius',
  footCircle: 'geometry.foot-circle',
  legDiameter: 'geometry.leg-diameter',
} as const

/** Ids of all of them, in the order of the drawing from the pump up. */
export const portableValueIds: readonly string[] = [
  ...Object.values(portableDimensions),
  ...Object.values(portableLengths),
]
