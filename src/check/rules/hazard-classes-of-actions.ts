/**
 * For each action class of a step the hazard classes that a caution must cover at the step or for its section.
 *
 * Source: risk assessment of the office by the principle of ISO 12100 (each hazard
 * of a task is named at the task); the rows are common practice, no source.
 */
export const hazardClassesOfActions: ReadonlyMap<string, readonly string[]> = new Map([
  ['open-cargo', ['H05', 'H06']],
  ['open-hydraulic', ['H03', 'H09', 'H13', 'H18', 'H21']],
  ['open-purge', ['H02', 'H05', 'H25']],
  ['open-spring', ['H29']],
  ['open-oil-side', ['H30']],
  ['enter', ['H01', 'H02', 'H08', 'H26', 'H27']],
  ['lift', ['H07', 'H08', 'H23', 'H27']],
  ['pressurise-gas', ['H02', 'H10']],
  ['pressurise-oil', ['H03']],
  ['restore-pressure', ['H03', 'H04']],
  ['purge', ['H02', 'H05', 'H12', 'H25']],
  ['start-pump', ['H04', 'H20', 'H28']],
  ['heat', ['H06', 'H14']],
  ['chemical', ['H15']],
  ['rotate-by-hand', ['H04', 'H11']],
  ['fit-seal', ['H16', 'H17']],
  ['fit-sleeve', ['H16', 'H17']],
  ['change-elastomer', ['H19']],
  ['drain', ['H09', 'H13', 'H21']],
  ['dispose', ['H21']],
  ['work-at-opening', ['H08']],
])

/** Hazard of a cargo that reacts with water: asked for only when such a cargo is on a vessel's list. */
export const reactiveCargoHazard = 'H24'

/** Action classes that also meet a reactive cargo. */
export const actionsAtReactiveCargo: readonly string[] = ['open-cargo', 'purge']
