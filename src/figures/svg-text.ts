/** Places and lengths in a figure, to a tenth. */
export function rounded(value: number): string {
  return String(Math.round(value * 10) / 10)
}

/** A figure is printed as it is, so that what an author wrote is escaped here. */
export function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

/** Widths of the letters of a common sans-serif face, in shares of its size; what is not named is as wide as `n`. */
const widths = new Map(
  (
    [
      [0.28, " !,.:;/|[]fijltI'"],
      [0.34, '()-r`"'],
      [0.5, 'cksvxyzJ'],
      [0.67, 'ABEKPSVXY&'],
      [0.73, 'CDHNRUwFLTZ+<>='],
      [0.78, 'GOQ'],
      [0.84, 'mM'],
      [1, 'W%@'],
    ] as const
  ).flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)),
)
const usual = 0.56

/** Width of a line of text in a sans-serif letter of this size. */
export function textWidth(text: string, size: number, bold = false): number {
  const letters = [...text].reduce((sum, letter) => sum + (widths.get(letter) ?? usual), 0)
  return letters * size * (bold ? 1.08 : 1)
}

/** Breaks a text between words into lines that are no wider than the room; a word that is wider stands alone. */
export function textLines(text: string, size: number, room: number, bold = false): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ').filter((one) => one !== '')) {
    const last = lines.at(-1)
    const longer = `${last} ${word}`
    if (last !== undefined && textWidth(longer, size, bold) <= room) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}
