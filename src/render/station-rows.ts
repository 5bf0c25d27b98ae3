/** Boxes that stand side by side on paper, each wide enough for a gloved hand. */
const mostInRow = 6

/** Stations of a reading in rows that fit a sheet, as even as can be: eight become four and four. */
export function stationRows(stations: readonly string[]): readonly (readonly string[])[] {
  const rows = Math.ceil(stations.length / mostInRow)
  if (rows === 0) return []
  const inRow = Math.ceil(stations.length / rows)
  return Array.from({length: rows}, (_, index) => stations.slice(index * inRow, (index + 1) * inRow)).filter(
    (row) => row.length > 0,
  )
}
