import {describe, expect, test} from 'vitest'
import {noUndefinedReference} from '../../../src/check/rules/no-undefined-reference.ts'
import {design} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

const known = {
  cautions: new Set(['fall', 'noise']),
  procedures: new Set(['sample', 'isolation']),
  tools: new Set(['gauge', 'spanner']),
  parts: new Set(['ring']),
  terms: new Set(['cofferdam']),
  facts: new Set(['backstop']),
  designs: [design()],
}

function told(text: string): readonly string[] {
  return toldBy((files) => noUndefinedReference(soundProcedure(text), known, files))
}

const inStep = (words: string, more = ''): string =>
  workText(`1. :step{#look} ${words}${more && `\n\n   ${more}`}`)

describe('a reference that leads somewhere is accepted', () => {
  test.each([
    ['nothing at all', procedureText('')],
    [
      'tools and parts',
      workText('1. :step{#look} Look.', {
        front: {tools: '[{tool: gauge}]', parts: '[{part: ring, quantity: 1, unit: piece}]'},
      }),
    ],
    ['a joint value', inStep('Tighten to :value{ref=hub-bolts.torque}.')],
    ['a ring value', inStep('Look.', '::value{ref=lower-ring.renewal}')],
    [
      'a value of every pump',
      inStep('Look.', '::wait{#wait least=house.isolation-proof missed="Begin again."}'),
    ],
    ['another procedure', inStep('See :procedure[isolation]{ref=isolation}.')],
    ['a term', inStep('Drain the :term[cofferdam]{ref=cofferdam}.')],
    ['a part in a sentence', inStep('Take the :part[ring]{ref=ring} out.')],
    ['a caution', workText('::caution{ref=fall section}\n\n::caution{ref=noise}\n\n1. :step{#look} Look.')],
    ['a fact', inStep('Look.', '::identify{fact=backstop}')],
    ['the tank plan', inStep('Look.', '::figure{name=tank-plan caption=Tanks}')],
    ['the order of a joint', inStep('Look.', '::figure{name="tightening-order:hub-bolts" caption=Order}')],
  ])('%s', (_what, text) => {
    expect(told(text)).toEqual([])
  })
})

describe('a reference that leads nowhere is refused with the nearest id', () => {
  const reading = '::reading{#gap title=gap quantity=length unit=mm stations=a phase=during'
  test.each<[string, string, string, string]>([
    [
      'a tool',
      workText('1. :step{#look} Look.', {front: {tools: '[{tool: guage}]'}}),
      'guage',
      'Unexpected `guage`, expected the id of a tool such as `gauge`',
    ],
    [
      'a part',
      workText('1. :step{#look} Look.', {front: {parts: '[{part: rinng, quantity: 1, unit: piece}]'}}),
      'rinng',
      'Unexpected `rinng`, expected the id of a part such as `ring`',
    ],
    [
      'a value in a sentence',
      inStep('Tighten to :value{ref=hub-bolt.torque}.'),
      ':value',
      'Unexpected `hub-bolt.torque`, expected the id of a value such as `hub-bolts.torque`',
    ],
    [
      'a value in bold words',
      inStep('Tighten **to :value{ref=hub-bolt.torque}**.'),
      ':value',
      'Unexpected `hub-bolt.torque`, expected the id of a value such as `hub-bolts.torque`',
    ],
    [
      'a value in the purpose',
      workText('1. :step{#look} Look.', {purpose: 'Holds :value{ref=mass.haed}.'}),
      ':value',
      'Unexpected `mass.haed`, expected the id of a value such as `mass.head`',
    ],
    [
      'a value in a state',
      workText('1. :step{#look} Look.', {before: '## State before\n\n- Below :value{ref=mass.haed}.'}),
      ':value',
      'Unexpected `mass.haed`, expected the id of a value such as `mass.head`',
    ],
    [
      'a value in an introduction',
      procedureText('## Work\n\n::section{#work}\n\nHolds :value{ref=mass.haed}.\n\n1. :step{#look} Look.'),
      ':value',
      'Unexpected `mass.haed`, expected the id of a value such as `mass.head`',
    ],
    [
      'a value below a hold point',
      workText(
        '1. :step{#look} Look.\n\n::hold-point{#seen title=Seen signed-by=a second-by=b}\n\nBelow :value{ref=mass.haed}.',
      ),
      ':value',
      'Unexpected `mass.haed`, expected the id of a value such as `mass.head`',
    ],
    [
      'a value in a note',
      inStep('Look.', 'Below :value{ref=mass.haed}.'),
      ':value',
      'Unexpected `mass.haed`, expected the id of a value such as `mass.head`',
    ],
    [
      'a value in a choice',
      inStep(
        'Look.',
        ':::one-of{#a}\n   - :choice{#b} Below :value{ref=mass.haed}.\n   - :choice{#c} Above.\n   :::',
      ),
      ':value',
      'Unexpected `mass.haed`, expected the id of a value such as `mass.head`',
    ],
    [
      'a plate',
      inStep('Look.', '::value{ref=setting.runout}'),
      '::value',
      'Unexpected `setting.runout`, expected the id of a value such as `setting.run-out`',
    ],
    [
      'the least time of a wait',
      inStep('Look.', '::wait{#wait least=house.isolation-prof missed="Begin again."}'),
      '::wait',
      'Unexpected `house.isolation-prof`, expected the id of a value such as `house.isolation-proof`',
    ],
    [
      'a procedure',
      inStep('See :procedure[isolation]{ref=isolaton}.'),
      ':procedure',
      'Unexpected `isolaton`, expected the id of a procedure such as `isolation`',
    ],
    [
      'a part in a sentence',
      inStep('Take the :part[ring]{ref=rinng} out.'),
      ':part',
      'Unexpected `rinng`, expected the id of a part such as `ring`',
    ],
    [
      'a part in bold words of a note',
      inStep('Look.', 'It **lies below the :part[ring]{ref=rinng}**.'),
      ':part',
      'Unexpected `rinng`, expected the id of a part such as `ring`',
    ],
    [
      'a term',
      inStep('Drain the :term[cofferdam]{ref=coferdam}.'),
      ':term',
      'Unexpected `coferdam`, expected the id of a term such as `cofferdam`',
    ],
    [
      'a caution of a section',
      workText('::caution{ref=fal section}\n\n1. :step{#look} Look.'),
      '::caution',
      'Unexpected `fal`, expected the id of a caution such as `fall`',
    ],
    [
      'a caution of a step',
      workText('::caution{ref=fal}\n\n1. :step{#look} Look.'),
      '::caution',
      'Unexpected `fal`, expected the id of a caution such as `fall`',
    ],
    [
      'a limit',
      inStep('Look.', `${reading} instrument=gauge limits=run-out-mos}`),
      '::reading',
      'Unexpected `run-out-mos`, expected the id of a limit of the design such as `run-out-most`',
    ],
    [
      'an instrument',
      inStep('Look.', `${reading} instrument=guage limits=run-out-most}`),
      '::reading',
      'Unexpected `guage`, expected the id of a tool such as `gauge`',
    ],
    [
      'a source of a derived reading',
      inStep(
        'Look.',
        '::derived{#clearance title=gap unit="mm diametral" calculation=clearance from="clearanse" phase=during limits=ring-renewal}',
      ),
      '::derived',
      'Unexpected `clearanse`, expected the id of a reading of this procedure such as `clearance`',
    ],
    [
      'a fact',
      inStep('Look.', '::identify{fact=backstopp}'),
      '::identify',
      'Unexpected `backstopp`, expected the id of a fact such as `backstop`',
    ],
    [
      'a figure',
      inStep('Look.', '::figure{name=tank-plann caption=Tanks}'),
      '::figure',
      'Unexpected `tank-plann`, expected the id of a figure such as `tank-plan`',
    ],
    [
      'the lengths of a figure, the first one alone',
      inStep('Look.', '::figure{name="portable-arrangement" caption=Rig}'),
      '::figure',
      'Unexpected `geometry.pump-length`, expected the id of a value such as `geometry.head-height`',
    ],
    [
      'the joint of a figure',
      inStep('Look.', '::figure{name="tightening-order:hub-bolt" caption=Order}'),
      '::figure',
      'Unexpected `hub-bolt`, expected the id of a joint such as `hub-bolts`',
    ],
    [
      'the seal of a figure',
      inStep('Look.', '::figure{name="seal-orientation:mass" caption=Lips}'),
      '::figure',
      'Unexpected `mass.lips`, expected the id of a value such as `mass.head`',
    ],
    [
      'the lift of a figure',
      inStep('Look.', '::figure{name="lift:head" caption=Lift}'),
      '::figure',
      'Unexpected `head.rated-load`, expected the id of a value',
    ],
    [
      'a figure for which no design states enough',
      inStep('Look.', '::figure{name=pipe-stack caption=Stack}'),
      '::figure',
      'Unexpected figure `pipe-stack`, expected a design that states all that it is drawn from',
    ],
  ])('%s', (_what, text, at, message) => {
    expect(told(text)).toEqual([`${placeIn(text, at)} ${message} no-undefined-reference`])
  })
})

test.each(['lowering', 'raising'])('the figure of %s asks for lowering bolts and their flange', (name) => {
  const text = inStep('Look.', `::figure{name=${name} caption=Bolts}`)
  const messages = told(text).join('\n')
  expect(messages).toContain(`Unexpected \`lowering.${name}-torque\`, expected the id of a value`)
  expect(messages).toContain('Unexpected `head-flange-bolts`, expected one of `hub-bolts`')
})

test('a procedure that refers to itself is refused', () => {
  const text = inStep('See :procedure[this]{ref=sample}.')
  expect(told(text)).toEqual([
    `${placeIn(text, ':procedure')} Unexpected reference of procedure \`sample\` to itself, expected another procedure no-reference-loop`,
  ])
})
