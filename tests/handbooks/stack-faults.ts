import {type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'

const vessel = 'vessels/vessel-s/vessel.yaml'

function sections(...lengths: readonly (readonly [number, string])[]): string {
  const list = lengths
    .map(([number, length]) => `      - {number: ${number}, length: ${length} m}\n`)
    .join('')
  return `stack-length: 9.2 m\n    stack-sections:\n${list}`
}

function supports(...places: readonly string[]): Change {
  return replaced(
    vessel,
    'stack-length: 9.2 m\n',
    `${sections([1, '2.000'], [2, '7.200'])}    stack-supports: [${places.join(', ')}]\n`,
  )
}

/** Faults of a pipe stack: sections that do not make it, supports where none can stand. */
export const stackFaults: readonly RuleCase[] = [
  {
    rule: 'no-broken-stack',
    what: 'sections that make 40 mm less than the stack',
    accepted: replaced(vessel, 'stack-length: 9.2 m\n', sections([1, '2.000'], [2, '7.200'])),
    rejected: replaced(vessel, 'stack-length: 9.2 m\n', sections([1, '2.000'], [2, '7.160'])),
    at: [vessel, '9.2 m'],
    reason:
      'Unexpected stack length of `9.2 m` of `1P`, expected the `9.160 m` that its 2 sections make to 1 mm each: 40 mm are missing',
    mend: 'Measure the sections again, or the whole stack',
    see: [vessel, '{number: 1'],
  },
  {
    rule: 'no-broken-stack',
    what: 'a section of the stack that is missing in the list',
    accepted: replaced(vessel, 'stack-length: 9.2 m\n', sections([1, '2.000'], [2, '2.000'], [3, '5.200'])),
    rejected: replaced(vessel, 'stack-length: 9.2 m\n', sections([1, '2.000'], [3, '5.200'])),
    at: [vessel, '{number: 3'],
    reason: 'Unexpected stack section `3` of `1P`, expected section `2`',
    mend: 'Number the sections from deck, each once, and list every one',
  },
  {
    rule: 'no-broken-stack',
    what: 'a support that stands at a joint of the stack',
    accepted: supports('3.10 m', '6.20 m'),
    rejected: supports('2.00 m', '6.20 m'),
    at: [vessel, '2.00 m'],
    reason:
      'Unexpected support `1` of `1P` at `2.00 m`, expected it clear of the flanges of joint `2` at `2.000 m`',
    mend: 'Measure both again; the bolts of a stack joint are not known',
    see: [vessel, '{number: 1'],
  },
  {
    rule: 'no-broken-stack',
    what: 'two supports of a stack in the wrong order',
    accepted: supports('3.10 m', '6.20 m'),
    rejected: supports('6.20 m', '3.10 m'),
    at: [vessel, '3.10 m'],
    reason: 'Unexpected support `2` of `1P` at `3.10 m`, expected it below support `1` at `6.20 m`',
    mend: 'List the supports from the top plate down',
    see: [vessel, '6.20 m'],
  },
]
