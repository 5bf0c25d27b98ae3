import {all, type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'
import {withOldBook} from './idle-faults.ts'

const design = 'designs/design-s.yaml'
const vessel = 'vessels/vessel-s/vessel.yaml'
const sister = 'vessels/vessel-t/vessel.yaml'
const cargoes = 'tables/cargoes.csv'
const suitability = 'tables/suitability.csv'
const friction = 'tables/friction.csv'
const hubPlates = '  - {part: hub-plates, quantity: 8, location: pump store}\n'

function addedThread(row: string): Change {
  return (content) => content.write('tables/threads.csv', `${content.read('tables/threads.csv')}${row}\n`)
}

/** A second pump in the same tank, like the first in all but its serial numbers. */
function secondPump(motor: string): string {
  return `  - id: 1s\n    tag: 1S\n    tank: 1p\n    design: design-s\n    serial: S-2\n    role: main\n    critical: no\n    installed: 2011-02-09\n    stack-length: 9.2 m\n    components: {head: H-2, motor: "${motor}", sleeve: C-2, stack: T-2}\n    facts: {backstop: fitted}\ntools-aboard:`
}

/** A second pump that says why one thing is not as on the first. */
function explainedPump(backstop: string, item: string): string {
  return secondPump('M-2').replace(
    'facts: {backstop: fitted}',
    `facts: {backstop: ${backstop}}\n    differences: [{item: ${item}, reason: exchanged at a docking}]`,
  )
}

/** A second vessel like the first in all but its serial numbers. */
function sisterVessel(sleeve: string): Change {
  return (content) =>
    content.write(
      sister,
      content
        .read(vessel)
        .replace('id: vessel-s', 'id: vessel-t')
        .replace('"0123450"', '"0234560"')
        .replace('serial: S-1', 'serial: S-2')
        .replace(/components: .*/u, `components: {head: H-2, motor: M-2, sleeve: "${sleeve}", stack: T-2}`),
    )
}

function ring(cured: string): string {
  return `${hubPlates}  - {part: flange-ring, quantity: 2, cured: ${cured}, location: pump store}\n`
}

/** Tables of one material, and what the cargo of the list does to another or the same. */
function suitabilityOf(material: string): Change {
  const head = '# title: Materials\n# source: demo-data\n# edition: demonstration\n# status: assumed\n'
  return all(
    (content) => content.write('tables/materials.csv', `${head}id,title\nfkm,FKM\n`),
    (content) =>
      content.write(suitability, `${head}material,cargo,word,note\n${material},gas-oil,suitable,no attack\n`),
  )
}

const withProtections = replaced(
  'office.yaml',
  'demonstration: yes\n',
  'demonstration: yes\nprotections: [gloves, goggles]\n',
)

const withRing = replaced(
  'parts.yaml',
  'parts:\n',
  'parts:\n  - {id: flange-ring, title: O-ring of the flange, class: consumable, size: 160 x 5.33 mm, rubber: FKM}\n',
)

/** Faults that reach an office with the papers of a ship. */
export const vesselFaults: readonly RuleCase[] = [
  {
    rule: 'no-wrong-shape',
    what: 'a friction value that is missing in its table',
    accepted: replaced(friction, 'B,0.10,0.10', 'B,0.10,0.11'),
    rejected: replaced(friction, 'B,0.10,0.10', 'B,0.10,'),
    at: [friction, ',vdi-2230'],
    reason: 'Unexpected blank in column `head-friction`, expected a value',
    mend: 'Fill the cell, or take the row out',
  },
  {
    rule: 'no-second-serial',
    what: 'one motor in two pumps',
    accepted: replaced(vessel, 'tools-aboard:', secondPump('M-2')),
    rejected: replaced(vessel, 'tools-aboard:', secondPump('M-1')),
    at: [vessel, '"M-1"'],
    reason:
      'Unexpected motor `M-1` at `1S` of `vessel-s`, expected another serial than that of the motor at `1P` of `vessel-s`',
    mend: 'Read both nameplates again',
    see: [vessel, 'M-1,'],
  },
  {
    rule: 'no-second-serial',
    what: 'one sleeve in the pumps of two vessels',
    accepted: sisterVessel('C-2'),
    rejected: sisterVessel('C-1'),
    at: [sister, '"C-1"'],
    reason:
      'Unexpected sleeve `C-1` at `1P` of `vessel-t`, expected another serial than that of the sleeve at `1P` of `vessel-s`',
    mend: 'Read both nameplates again',
    see: [vessel, 'C-1,'],
  },
  {
    rule: 'no-bad-quantity',
    what: 'a pressure in psi where bar is meant',
    accepted: replaced(vessel, 'return-pressure: 6 bar(g)', 'return-pressure: 5 bar(g)'),
    rejected: replaced(vessel, 'return-pressure: 6 bar(g)', 'return-pressure: 6 psi'),
    at: [vessel, '6 psi'],
    reason:
      'Unexpected unit `psi`, expected a number such as `3.5` with one of the units `Pa(g)`, `bar(g)`, `mbar(g)`, `psi(g)`',
    mend: 'Write a number, a blank and the unit; write `not known` with a reason where nobody knows',
  },
  {
    rule: 'no-aged-rubber',
    what: 'O-rings whose first storage period is over',
    accepted: all(withRing, replaced(vessel, hubPlates, ring('2009-05-14'))),
    rejected: all(withRing, replaced(vessel, hubPlates, ring('2009-05-13'))),
    at: [vessel, '{part: flange-ring'],
    reason:
      'Unexpected `flange-ring` aboard `vessel-s`, cured 2009-05-13 and valid to 2019-05-13, expected rubber that is valid on 2019-05-14',
    mend: 'Send new ones; until 2024-05-13 the old ones serve after an inspection',
    see: ['parts.yaml', '{id: flange-ring'],
  },
  {
    rule: 'no-wrong-shape',
    what: 'a ring of a rubber that there is not',
    accepted: all(withRing, replaced('parts.yaml', 'rubber: FKM', 'rubber: NBR')),
    rejected: all(withRing, replaced('parts.yaml', 'rubber: FKM', 'rubber: FMK')),
    at: ['parts.yaml', 'FMK'],
    reason: 'Unexpected `FMK`, expected a word such as `FKM`',
    mend: 'Write one of AU, BR, EU, IR, NR, SBR, BIIR, CIIR, CR, HNBR, IIR, NBR, XNBR, EPDM, EPM, FKM, FVMQ, VMQ',
  },
  {
    rule: 'no-undefined-reference',
    what: 'a cargo of which nobody has stated anything',
    accepted: all(replaced(vessel, 'cargoes: [gas-oil]', 'cargoes: [gas-oil, gas-oils]'), (content) =>
      content.write(
        cargoes,
        `${content.read(cargoes)}gas-oils,Gas oils,850,yes,no,no,nitrogen,WARNING,gloves\n`,
      ),
    ),
    rejected: replaced(vessel, 'cargoes: [gas-oil]', 'cargoes: [gas-oil, gas-oils]'),
    at: [vessel, 'gas-oils'],
    reason: 'Unexpected `gas-oils`, expected the id of a row of tables/cargoes.csv such as `gas-oil`',
    mend: 'Write the id of a row of tables/cargoes.csv that exists, or add it',
  },
  {
    rule: 'no-undefined-reference',
    what: 'a seal material that no table knows',
    accepted: suitabilityOf('fkm'),
    rejected: suitabilityOf('fkn'),
    at: [suitability, 'fkn,gas-oil'],
    reason: 'Unexpected `fkn`, expected the id of a row of tables/materials.csv such as `fkm`',
    mend: 'Write the id of a row of tables/materials.csv that exists, or add it',
  },
  {
    rule: 'no-wrong-shape',
    what: 'a cargo of a word of danger that there is not',
    accepted: replaced(cargoes, 'WARNING', 'DANGER'),
    rejected: replaced(cargoes, 'WARNING', 'WARNIGN'),
    at: [cargoes, 'WARNIGN'],
    reason: 'Unexpected `WARNIGN`, expected a word such as `WARNING`',
    mend: 'Write one of DANGER, WARNING',
  },
  {
    rule: 'no-unlisted-protection',
    what: 'a cargo that asks for a protection nobody has',
    accepted: all(withProtections, replaced(cargoes, 'gloves and goggles', '"gloves, goggles"')),
    rejected: all(withProtections, replaced(cargoes, 'gloves and goggles', '"gloves, google"')),
    at: [cargoes, '"gloves, google"'],
    reason: 'Unexpected protection `google`, expected a protection such as `goggles`',
    mend: 'Write a word of `protections:` in office.yaml, with commas between, or add it there',
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque out of the range of the wrench',
    accepted: replaced('tools.yaml', 'least: 5 N·m', 'least: 10 N·m'),
    rejected: replaced('tools.yaml', 'least: 5 N·m, most: 100 N·m', 'least: 70 N·m, most: 300 N·m'),
    at: ['procedures/ring-check.md', '::value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with `torque-wrench` of 70 N·m to 300 N·m, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
    see: ['procedures/ring-check.md', 'torque-wrench, note'],
  },
  {
    rule: 'no-superseded-source',
    what: 'a mass from a superseded book',
    accepted: replaced(design, 'value: 186 kg', 'value: 187 kg'),
    rejected: all(
      withOldBook('superseded, superseded-by: demo-data'),
      replaced(design, 'value: 186 kg', 'value: {value: 187 kg, status: as-built, source: old-data}'),
    ),
    at: ['sources.yaml', '{id: old-data'],
    reason: 'Unexpected superseded source `old-data` under 1 values, expected a current one',
    mend: 'Move the values to `demo-data`, or accept it in writing',
  },
  {
    rule: 'no-contradicting-clearance',
    what: 'a drawing and a table of running clearances that contradict each other',
    accepted: replaced(design, 'minimum-new: 0.52 mm diametral', 'minimum-new: 0.51 mm diametral'),
    rejected: replaced(design, 'minimum-new: 0.52 mm diametral', 'minimum-new: 0.50 mm diametral'),
    at: [design, '0.50 mm diametral'],
    reason:
      'Unexpected least new clearance of `0.50 mm diametral` of `lower-ring` at a running diameter of `210 mm` by `demo-data`, expected at least the `0.51 mm diametral` of tables/running-clearances.csv by `common-practice`',
    mend: 'Read drawing and table again: one of the two is wrong; or write `below-table:` with the reason',
    see: ['tables/running-clearances.csv', '200,225'],
  },
  {
    rule: 'no-idle-difference',
    what: 'a reason for a difference that is none',
    accepted: replaced(vessel, 'tools-aboard:', explainedPump('none', 'fact.backstop')),
    rejected: replaced(vessel, 'tools-aboard:', explainedPump('fitted', 'fact.backstop')),
    at: [vessel, '{item'],
    reason:
      'Unexpected reason for `fact.backstop`, expected one beside what differs: all sister pumps have the same',
    mend: 'Take the reason out: it would hide the next difference',
  },
  {
    rule: 'no-undefined-reference',
    what: 'a reason for a difference in a thing that no pump has',
    accepted: replaced(vessel, 'tools-aboard:', explainedPump('none', 'fact.backstop')),
    rejected: replaced(vessel, 'tools-aboard:', explainedPump('none', 'fact.backstpo')),
    at: [vessel, 'fact.backstpo'],
    reason:
      'Unexpected `fact.backstpo`, expected the id of a thing that is stated of sister pumps such as `fact.backstop`',
    mend: 'Write the id of a thing that is stated of sister pumps that exists, or add it',
  },
  {
    rule: 'no-impossible-value',
    what: 'two rows of a table for one diameter',
    accepted: replaced('tables/running-clearances.csv', '200,225,0.51', '200,230,0.51'),
    rejected: replaced('tables/running-clearances.csv', '200,225,0.51', '190,225,0.51'),
    at: ['tables/running-clearances.csv', '190,225'],
    reason:
      'Unexpected range from `190 mm` to `225 mm` with `0.51 mm diametral` that overlaps the one from `0 mm` to `200 mm` with `0.48 mm diametral`, expected each diameter in one row',
    mend: 'Read the source of the table again',
    see: ['tables/running-clearances.csv', '0,200,0.48'],
  },
  {
    rule: 'no-duplicate-id',
    what: 'two pitches for one thread',
    accepted: addedThread('M14,14,2'),
    rejected: addedThread('M12,12,1.5'),
    at: ['tables/threads.csv', 'M12,12,1.5'],
    reason: 'Unexpected second row `M12`, expected each row once',
    mend: 'Keep the row that the source prints',
    see: ['tables/threads.csv', 'M12,12,1.75'],
  },
]
