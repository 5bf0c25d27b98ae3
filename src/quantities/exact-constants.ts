/**
 * Numbers that are exact by definition, in SI.
 *
 * Source: NIST SP 811 appendix B and ISO 80000-3 and -4; from memory, compared in tests with units computed apart from
 * this project.
 */
export const inch = 0.0254
export const pound = 0.45359237
/** Standard acceleration of free fall, m/s². */
export const standardGravity = 9.80665
export const poundForce = pound * standardGravity
export const poundForcePerSquareInch = poundForce / (inch * inch)
export const foot = 12 * inch
export const gallonUnitedStates = 231 * inch ** 3
export const gallonImperial = 4.54609e-3
export const atmosphere = 101_325
