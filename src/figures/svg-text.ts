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

const thin = new Set("iljtfrI.,:;'!|()[]/ -")
const wide = new Set('mwMW%@')

/** Width of a line of text in a sans-serif letter of this size; a little more than drawn, never less. */
export function textWidth(text: string, size: number, bold = false): number {
  const letters = [...text].reduce((sum, letter) => sum + widthOf(letter), 0)
  return letters * size * (bold ? 1.07 : 1)
}

function widthOf(letter: string): number {
  if (thin.has(letter)) return 0.36
  if (wide.has(letter)) return 0.95
  return letter === letter.toUpperCase() && letter !== letter.toLowerCase() ? 0.76 : 0.58
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
