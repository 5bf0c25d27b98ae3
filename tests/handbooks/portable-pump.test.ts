import {describe, expect, test} from 'vitest'
import {
  type ChangedContent,
  errorsAfter,
  smallContent,
  withChangedContent,
} from '../commands/changed-content.ts'
import {renderedContent} from '../commands/rendered-content.ts'
import {addPortablePump} from './portable-pump-for-tests.ts'

const vesselFile = 'vessels/vessel-s/vessel.yaml'

/** A page of the whole ship that sends its reader to a procedure of a pump. */
const ofTheShip = (to: string): string => `---
id: round
activity: card
maintenance: all
scope: vessel
performed-by: second engineer
supervised-by: chief engineer
competence: crew
people: 1
hours: 1
clear-height: none
weather: calm
permits: []
tools: []
parts: []
records: []
retired-ids: []
---
# Round

This page is read on a round.

## State before

- A pump is chosen.

## State after

- The round is done.

## Go

::section{#go}

1. :step{#go-on} Start the work by :procedure[its page]{ref=${to}}.
`

const told = (spoil: (content: ChangedContent) => void): ReturnType<typeof errorsAfter> =>
  errorsAfter((content) => {
    addPortablePump(content)
    spoil(content)
  }, smallContent)

describe('a vessel with a portable pump', () => {
  test('has for each pump the pages of the procedures and jobs that are for it, and no others', () =>
    withChangedContent(async (content) => {
      addPortablePump(content)
      const {vessels} = await renderedContent(content.folder)
      const paths = (vessels.get('vessel-s') ?? []).map(({path}) => path)
      expect(paths.filter((path) => path.startsWith('p/')).sort()).toEqual([
        'p/1p/index.html',
        'p/1p/job-ring-service.html',
        'p/1p/ring-check.html',
        'p/1p/values.html',
        'p/portable-1/index.html',
        'p/portable-1/job-rig-drill.html',
        'p/portable-1/rig.html',
        'p/portable-1/values.html',
      ])
    }, smallContent))

  test('says where it is kept, and nothing of a tank, a stack or a cofferdam', () =>
    withChangedContent(async (content) => {
      addPortablePump(content)
      const {vessels} = await renderedContent(content.folder)
      const page = (path: string): string => {
        const file = vessels.get('vessel-s')?.find((one) => one.path === path)
        return new TextDecoder().decode(file?.bytes)
      }
      const rig = page('p/portable-1/rig.html')
      expect(rig).toContain('<dt>Kept at</dt><dd>forward store</dd>')
      expect(rig).toContain('18 m')
      expect(rig).not.toMatch(/Stack length|<dt>Tank<\/dt>/u)
      expect(page('p/portable-1/values.html')).not.toMatch(
        /cofferdam|purge pressure|stack length|tank volume/u,
      )
      expect(page('p/1p/ring-check.html')).toContain('<dt>Stack length</dt>')
      expect(page('p/1p/index.html')).not.toContain('Rig the portable pump')
      expect(page('p/portable-1/index.html')).not.toContain('Wear ring check')
      expect(page('index.html')).toContain('Rig drill')
    }, smallContent))

  test('asks for no fact of pumps in tanks that its file does not state', () =>
    withChangedContent(async (content) => {
      addPortablePump(content)
      const pump = async (id: string): Promise<string> => {
        const {vessels} = await renderedContent(content.folder)
        const file = vessels.get('vessel-s')?.find(({path}) => path === `p/${id}/index.html`)
        return new TextDecoder().decode(file?.bytes)
      }
      expect(await pump('portable-1')).toContain('<h2>As fitted</h2>')
      content.replace(vesselFile, 'facts: {backstop: none}', 'facts: {}')
      expect(await pump('portable-1')).not.toMatch(/As fitted|NOT KNOWN/u)
      content.replace('procedures/ring-check.md', ' when="backstop = fitted"', '')
      content.replace(vesselFile, 'facts: {backstop: fitted}', 'facts: {}')
      expect(await pump('1p')).toMatch(/<h2>As fitted<\/h2>.*NOT KNOWN/u)
    }, smallContent))

  test('leads to it from the start page, beside the plan of the tanks', () =>
    withChangedContent(async (content) => {
      addPortablePump(content)
      const {vessels} = await renderedContent(content.folder)
      const file = vessels.get('vessel-s')?.find(({path}) => path === 'index.html')
      const beside = new TextDecoder()
        .decode(file?.bytes)
        .split('<h2 id="plan-head">')[1]
        ?.split('</section>')[0]
      expect(beside).toContain(
        '<a href="p/portable-1/index.html"><b>PORTABLE 1</b><span>kept at: forward store</span></a>',
      )
    }, smallContent))

  test('prints NOT KNOWN where the office has set no time for the drill', () =>
    withChangedContent(async (content) => {
      addPortablePump(content)
      content.replace(
        'procedures/rig.md',
        'to its handle.',
        'to its handle.\n\n   ::value{ref=house.portable-rig-time}',
      )
      const plate = async (): Promise<string> => {
        const {vessels} = await renderedContent(content.folder)
        const file = vessels.get('vessel-s')?.find(({path}) => path === 'p/portable-1/rig.html')
        return new TextDecoder().decode(file?.bytes).split('longest time of the drill')[0]?.slice(-300) ?? ''
      }
      expect(await plate()).toContain('90')
      content.replace(
        'office.yaml',
        'portable-rig-time: 90 min',
        'portable-rig-time: {value: not known, reason: no drill was timed}',
      )
      const unknown = await plate()
      expect(unknown).toContain('NOT KNOWN')
      expect(unknown).not.toContain('90')
    }, smallContent))
})

describe('a portable pump', () => {
  test('is told without a place where it is kept', async () => {
    const {errors: lines} = await told((content) =>
      content.replace(vesselFile, '    kept-at: forward store\n', ''),
    )
    expect(lines).toEqual([
      `${vesselFile}:40:5 error Unexpected position \`portable-1\` of role \`portable\` without \`kept-at:\`, expected where the pump is kept no-missing-key`,
    ])
  })

  test('is told with a tank', async () => {
    const {errors: lines} = await told((content) =>
      content.replace(
        vesselFile,
        '    kept-at: forward store\n',
        '    kept-at: forward store\n    tank: 1p\n',
      ),
    )
    expect(lines).toEqual([
      `${vesselFile}:40:5 error Unexpected \`tank:\` of position \`portable-1\` of role \`portable\`, expected none no-unknown-key`,
    ])
  })

  test('is told with a design of pumps that hang in tanks', async () => {
    const {errors: lines} = await told((content) =>
      content.replace(vesselFile, '    design: design-p\n', '    design: design-s\n'),
    )
    expect(lines.join('\n')).toContain(
      'Unexpected design `design-s` with `cofferdam:` for position `portable-1` of role `portable`, expected one without it no-undefined-reference',
    )
  })
})

describe('a pump that hangs in a tank', () => {
  test.each(['tank: 1p', 'stack-length: 9.2 m'])('is told without `%s`', async (line) => {
    const {errors: lines} = await told((content) => content.replace(vesselFile, `    ${line}\n`, ''))
    expect(lines).toEqual([
      `${vesselFile}:29:5 error Unexpected position \`1p\` of role \`main\` without \`${line.split(':')[0]}:\`, expected the tank in which it hangs and the length of its stack no-missing-key`,
    ])
  })

  test('is told with a design that states no cofferdam', async () => {
    const {errors: lines} = await told((content) =>
      content.replace(vesselFile, '    design: design-s\n', '    design: design-p\n'),
    )
    expect(lines.join('\n')).toContain(
      'Unexpected design `design-p` without `cofferdam:` for position `1p` of role `main`, expected one with it no-undefined-reference',
    )
  })
})

describe('a procedure', () => {
  test('for every pump is told where a pump has not what it asks for', async () => {
    const {errors: lines} = await errorsAfter((content) => addPortablePump(content, ''), smallContent)
    const text = lines.join('\n')
    expect(text).toContain('without isolation point for `pressure`')
    expect(text).toContain('Unexpected `hub-bolts.torque` on position `portable-1`')
  })

  test('sends nobody to a procedure that is not for the pump', async () => {
    const {errors: lines} = await told((content) =>
      content.replace('procedures/ring-check.md', 'lock it.', 'lock it by :procedure[the hoses]{ref=rig}.'),
    )
    expect(lines).toEqual([
      'procedures/ring-check.md:42:67 error Unexpected reference to `rig` on position `1p` of `vessel-s`, which it is not for, expected a procedure of this pump no-undefined-reference',
    ])
  })

  test('of the whole ship names no procedure that one of its pumps has not, whichever is the first', async () => {
    const {errors: lines} = await told((content) => {
      content.write('procedures/round.md', ofTheShip('ring-check'))
      content.write('procedures/hose-round.md', ofTheShip('rig').replace('id: round', 'id: hose-round'))
    })
    expect(lines).toEqual([
      'procedures/hose-round.md:35:36 error Unexpected reference to `rig` on position `1p` of `vessel-s`, which it is not for, expected a procedure of this pump no-undefined-reference',
      'procedures/round.md:35:36 error Unexpected reference to `ring-check` on position `portable-1` of `vessel-s`, which it is not for, expected a procedure of this pump no-undefined-reference',
    ])
  })

  test.each(['vessel', 'design'])(
    'with one page for a %s may name what each of its pumps has',
    async (scope) => {
      const {errors: lines} = await told((content) => {
        const forTanks = ofTheShip('ring-check').replace(
          'scope: vessel',
          `scope: ${scope}\nwhen: role ≠ portable`,
        )
        content.write('procedures/round.md', forTanks)
        content.write(
          'procedures/hose-round.md',
          ofTheShip('card')
            .replace('id: round', 'id: hose-round')
            .replace('scope: vessel', `scope: ${scope}`),
        )
        content.write('procedures/card.md', ofTheShip('hose-round').replace('id: round', 'id: card'))
      })
      expect(lines).toEqual([])
    },
  )

  test('of a design names no procedure that one of its pumps has not', async () => {
    const {errors: lines} = await told((content) =>
      content.write('procedures/round.md', ofTheShip('ring-check').replace('scope: vessel', 'scope: design')),
    )
    expect(lines).toEqual([
      'procedures/round.md:35:36 error Unexpected reference to `ring-check` on position `portable-1` of `vessel-s`, which it is not for, expected a procedure of this pump no-undefined-reference',
    ])
  })

  test('may send there under a condition', async () => {
    const {errors: lines} = await told((content) =>
      content.replace(
        'procedures/ring-check.md',
        '#close-pressure}',
        '#to-hoses when="role = portable"} See :procedure[the hoses]{ref=rig}.\n\n2. :step{#close-pressure}',
      ),
    )
    expect(lines.filter((line) => line.includes('rig'))).toEqual([])
  })

  test.each([
    ['procedures/rig.md', 'rig'],
    ['jobs/rig-drill.yaml', 'rig-drill'],
  ])('or job is told whose pumps nobody can tell: %s', async (file, id) => {
    const {errors: lines} = await told((content) => {
      content.replace(file, 'when: role = portable', 'when: backstop = none')
      content.replace(
        vesselFile,
        'facts: {backstop: fitted}',
        'facts: {backstop: {value: not known, reason: no record}}',
      )
      content.replace('procedures/ring-check.md', ' when="backstop = fitted"', '')
    })
    expect(lines.join('\n')).toContain(
      `Unexpected \`when:\` of \`${id}\` on fact \`backstop\` that is not known for position \`1p\`, expected a fact that is known for every pump no-unknown-fact`,
    )
  })

  test.each(['procedures/rig.md', 'jobs/rig-drill.yaml'])(
    'or job is told with an unknown fact: %s',
    async (file) => {
      const {errors: lines} = await told((content) =>
        content.replace(file, 'when: role = portable', 'when: roll = portable'),
      )
      expect(lines.join('\n')).toContain('Unexpected fact `roll`, expected a fact such as `role`')
    },
  )
})
