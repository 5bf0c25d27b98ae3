import {airChanges, airChangesNote} from '../calculations/entry/air-changes.ts'
import {dilution, dilutionNote} from '../calculations/entry/dilution.ts'
import {entryLimit, entryLimitNote} from '../calculations/entry/entry-limit.ts'
import {gasBuildUp, gasBuildUpNote} from '../calculations/entry/gas-build-up.ts'
import {
  halfLife,
  perfectMixing,
  type Ventilation,
  ventilationTime,
  ventilationTimeNote,
} from '../calculations/entry/ventilation-time.ts'
import {nothingInSupply} from '../calculations/gas/well-mixed.ts'
import {count} from '../quantities/named-units.ts'
import {type CalculationRun, quantityLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {contentLine, contentWord, supplyOf} from './gas-content-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Ventilation of spaces before and during entry. */
export const ventilationCalculations: readonly ListedCalculation[] = [
  {note: airChangesNote, keys: ['from', 'to'], optionalKeys: ['supply'], run: runAirChanges},
  {
    note: dilutionNote,
    keys: ['from', 'volume', 'flow', 'time'],
    optionalKeys: ['supply', 'mixing'],
    run: runDilution,
  },
  {note: entryLimitNote, keys: ['limit', 'share'], optionalKeys: [], run: runEntryLimit},
  {
    note: gasBuildUpNote,
    keys: ['source', 'volume', 'flow', 'time'],
    optionalKeys: ['from', 'supply', 'mixing'],
    run: runGasBuildUp,
  },
  {
    note: ventilationTimeNote,
    keys: ['volume', 'flow'],
    optionalKeys: ['changes', 'mixing'],
    run: runVentilationTime,
  },
]

function runAirChanges(words: CalculationWords): CalculationRun {
  const [from, supply] = [contentWord(words, 'from'), supplyOf(words)]
  const changes = airChanges({from, to: contentWord(words, 'to'), supply})
  return {
    results: [quantityLine('air-changes', changes, '', 3)],
    taken: notGiven(words, [contentLine('supply', supply, from)]),
    note: airChangesNote,
  }
}

function runDilution(words: CalculationWords): CalculationRun {
  const [from, supply, ventilation] = [contentWord(words, 'from'), supplyOf(words), ventilationOf(words)]
  const after = dilution({...ventilation, from, supply, time: words.quantity('time', 'time')})
  return {
    results: [
      contentLine('content', after.content, from),
      quantityLine('air-changes', after.changes, '', 3),
      quantityLine('half-life', halfLife(ventilation), 'min', 2),
    ],
    taken: notGiven(words, [
      contentLine('supply', supply, from),
      quantityLine('mixing', ventilation.mixing, '1', 2),
    ]),
    note: dilutionNote,
  }
}

function runEntryLimit(words: CalculationWords): CalculationRun {
  const limit = contentWord(words, 'limit')
  const content = entryLimit({limit, share: words.quantity('share', 'ratio')})
  return {results: [contentLine('content', content, limit)], taken: [], note: entryLimitNote}
}

function runGasBuildUp(words: CalculationWords): CalculationRun {
  const [supply, ventilation] = [supplyOf(words), ventilationOf(words)]
  const from = words.has('from') ? contentWord(words, 'from') : nothingInSupply
  const built = gasBuildUp({
    ...ventilation,
    from,
    supply,
    source: words.quantity('source', 'volume-flow'),
    time: words.quantity('time', 'time'),
  })
  return {
    results: [contentLine('content', built.content, from), contentLine('in-the-end', built.steady, from)],
    taken: notGiven(words, [
      contentLine('from', from, from),
      contentLine('supply', supply, from),
      quantityLine('mixing', ventilation.mixing, '1', 2),
    ]),
    note: gasBuildUpNote,
  }
}

function runVentilationTime(words: CalculationWords): CalculationRun {
  const ventilation = ventilationOf(words)
  const changes = words.optional('changes', 'count') ?? count(20)
  return {
    results: [
      quantityLine('time', ventilationTime(ventilation, changes), 'h', 2),
      quantityLine('half-life', halfLife(ventilation), 'min', 2),
    ],
    taken: notGiven(words, [
      quantityLine('changes', changes, '', 0),
      quantityLine('mixing', ventilation.mixing, '1', 2),
    ]),
    note: ventilationTimeNote,
  }
}

function ventilationOf(words: CalculationWords): Ventilation {
  return {
    volume: words.quantity('volume', 'volume'),
    flow: words.quantity('flow', 'volume-flow'),
    mixing: words.optional('mixing', 'ratio') ?? perfectMixing,
  }
}
