import type {Tool} from '../../handbook-model/office-content.ts'
import {
  type DerivedReading,
  derivations,
  type Procedure,
  type Reading,
} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {units} from '../../quantities/units.ts'
import {expectedWord} from '../nearest-word.ts'

/**
 * A reading has a unit, an instrument that can show it, and a limit of its own or of the figure computed from it; an
 * as-left reading has its as-found twin before it.
 *
 * A number without a limit is written down and judged by nobody. As-left without as-found gives no trend.
 *
 * Accepted: `::reading{#ring-found … limits=""}` that feeds `::derived{… from="ring-found hub-found" limits=lower-ring-renew}`.
 * Rejected: the same reading with no derived reading behind it.
 */
export function noUnlimitedReading(
  procedure: Procedure,
  tools: ReadonlyMap<string, Tool>,
  files: ContentFiles,
): void {
  const readings = readingsOf(procedure)
  const fed = new Set(
    readings.flatMap((one) => (one.kind === 'derived' ? one.from.map((from) => from.id) : [])),
  )
  for (const reading of readings) {
    if (reading.limits.length === 0 && !fed.has(reading.id)) {
      addMessage(
        files,
        reading.place,
        'no-unlimited-reading',
        `Unexpected reading \`${reading.id}\` without a limit, expected \`limits=…\` or a \`::derived\` that is computed from it`,
        {note: 'Name a limit of the design, or the derived reading that is judged'},
      )
    }
    checkUnit(reading, files)
    if (reading.kind === 'reading') checkInstrument(reading, tools, files)
    else checkDerived(reading, readings, files)
  }
  for (const reading of readings.filter((one) => one.phase === 'as-left')) {
    const twin = reading.id.replace(/-left$/u, '-found')
    const found = readings.findIndex((one) => one.phase === 'as-found' && one.id === twin)
    if (found === -1 || found > readings.indexOf(reading)) {
      addMessage(
        files,
        reading.place,
        'no-as-left-alone',
        `Unexpected as-left reading \`${reading.id}\` without an as-found twin before it, expected a reading \`${twin}\` with \`phase=as-found\``,
        {note: `Take the reading as found first and name it \`${twin}\`; the as-left one ends in \`-left\``},
      )
    }
  }
}

/** All readings of a procedure in order. */
export function readingsOf(procedure: Procedure): readonly (Reading | DerivedReading)[] {
  return procedure.sections.flatMap((section) =>
    section.items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) => (part.kind === 'reading' || part.kind === 'derived' ? [part] : []))
        : [],
    ),
  )
}

function checkUnit(reading: Reading | DerivedReading, files: ContentFiles): void {
  const symbols = units.map((unit): string => unit.symbol)
  if (symbols.includes(reading.unit) && reading.unit !== '') return
  addMessage(
    files,
    reading.place,
    'no-unlimited-reading',
    `Unexpected unit \`${reading.unit}\` of reading \`${reading.id}\`, ${expectedWord(reading.unit, symbols, 'a unit')}`,
    {note: 'Write the unit in its proper form'},
  )
}

function checkInstrument(reading: Reading, tools: ReadonlyMap<string, Tool>, files: ContentFiles): void {
  const tool = tools.get(reading.instrument.id)
  if (reading.stations.length === 0) {
    addMessage(
      files,
      reading.place,
      'no-unlimited-reading',
      `Unexpected reading \`${reading.id}\` without stations, expected \`stations="…"\``,
      {note: 'Name each place where it is read'},
    )
  }
  if (!tool || tool.instrument) return
  addMessage(
    files,
    reading.place,
    'no-unread-instrument',
    `Unexpected instrument \`${tool.id}\` of reading \`${reading.id}\` without an instrument class, expected \`instrument: {graduation: …, uncertainty: …}\` in tools.yaml`,
    {note: 'State what the instrument can show', cause: tool.place},
  )
}

function checkDerived(
  reading: DerivedReading,
  all: readonly (Reading | DerivedReading)[],
  files: ContentFiles,
): void {
  const wanted = derivations.get(reading.calculation)?.from.length
  if (wanted === undefined) {
    addMessage(
      files,
      reading.place,
      'no-undefined-reference',
      `Unexpected calculation \`${reading.calculation}\`, ${expectedWord(reading.calculation, derivations.keys(), 'a calculation')}`,
      {note: `The calculations are ${[...derivations.keys()].join(', ')}`},
    )
  } else if (reading.from.length !== wanted) {
    addMessage(
      files,
      reading.place,
      'no-wrong-shape',
      `Unexpected ${reading.from.length} readings in \`from\` of \`${reading.id}\`, expected ${wanted} for \`${reading.calculation}\``,
      {note: 'Name them in the order of the calculation'},
    )
  }
  for (const from of reading.from) {
    const source = all.find((one) => one.id === from.id)
    if (source && all.indexOf(source) >= all.indexOf(reading)) {
      addMessage(
        files,
        reading.place,
        'no-undefined-reference',
        `Unexpected \`${from.id}\` in \`from\` of \`${reading.id}\` that does not stand before it, expected an earlier reading`,
        {note: 'Move the derived reading below the readings it is computed from', cause: source.place},
      )
    }
    if (source && source.phase !== reading.phase) {
      addMessage(
        files,
        reading.place,
        'no-unit-mix',
        `Unexpected \`${reading.id}\` of phase \`${reading.phase}\` from \`${from.id}\` of phase \`${source.phase}\`, expected readings of one phase`,
        {
          note: 'Compute as-found from as-found readings and as-left from as-left readings',
          cause: source.place,
        },
      )
    }
  }
}
