/**
 * Contrast of two colours, 1 to 21.
 *
 * Source: WCAG 2.2, definitions of relative luminance and contrast ratio, w3.org/TR/WCAG22; from memory.
 */
export function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05)
}

/** Red, green and blue of `#abc` or `#aabbcc`, each 0 to 1. */
export function channels(colour: string): readonly [number, number, number] {
  const digits = /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/u.exec(colour)?.[0].slice(1)
  if (digits === undefined) throw new Error(`Unexpected colour \`${colour}\`, expected #abc or #aabbcc`)
  const wide = digits.length === 3 ? [...digits].map((one) => one + one).join('') : digits
  const at = (from: number): number => Number.parseInt(wide.slice(from, from + 2), 16) / 255
  return [at(0), at(2), at(4)]
}

function luminance(colour: string): number {
  const [red, green, blue] = channels(colour).map((one) =>
    one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4,
  )
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0)
}
