import {describe, expect, test} from 'vitest'
import {contentOf} from './content-for-tests.ts'
import {fact} from './data-for-tests.ts'
import {handbook, pageAt, tightness} from './handbook-for-tests.ts'
import {positionOf, vesselA} from './vessel-for-tests.ts'

const {pages} = handbook()

describe('the start page', () => {
  test('lists every pump with the count of what is not known of it', () => {
    expect(pageAt(pages, 'start', 'index.html').positions).toEqual([
      {link: {text: '4P', path: 'p/4p/index.html'}, serial: 'P-4p', design: 'Design A', notKnown: 0},
      {link: {text: '4S', path: 'p/4s/index.html'}, serial: 'P-4s', design: 'Design A', notKnown: 3},
    ])
  })

  test('says that it replaces no permit and no rule, and that the stricter rule wins', () => {
    const safety = pageAt(pages, 'start', 'index.html').safety.join(' ')
    for (const word of [
      'permit',
      'class',
      'flag',
      'port',
      'stricter',
      'enclosed spaces',
      'hot work',
      'lifting',
      'pressure tests',
    ])
      expect(safety).toContain(word)
  })
})

describe('the page of a pump', () => {
  test('shows as fitted what is known and NOT KNOWN with its reason', () => {
    expect(pageAt(pages, 'position', 'p/4s/index.html').asFitted).toEqual([
      {
        label: 'backstop of the shaft',
        text: 'NOT KNOWN - MEASURE AND REPORT (opened by nobody yet)',
        known: false,
      },
      {label: 'cargo seal', text: 'single lip seal', known: true},
      {label: 'material of the O-rings', text: 'FKM', known: true},
    ])
  })

  test('shows a fact that the position does not even mention as NOT KNOWN, and never the default of the design', () => {
    const silent = positionOf('4p', [fact('backstop', undefined)])
    const vessel = {...vesselA, positions: [silent, positionOf('4s', [fact('cargo-seal', 'single-lip')])]}
    const bare = handbook(contentOf({list: [tightness], vessels: new Map([['vessel-a', vessel]])})).pages
    const material = {label: 'material of the O-rings', text: 'FKM', known: true}
    const open = {label: 'backstop of the shaft', text: 'NOT KNOWN - MEASURE AND REPORT', known: false}
    expect(pageAt(bare, 'position', 'p/4s/index.html').asFitted).toEqual([
      open,
      {label: 'cargo seal', text: 'single lip seal', known: true},
      material,
    ])
    expect(pageAt(bare, 'position', 'p/4p/index.html').asFitted).toEqual([
      open,
      {...open, label: 'cargo seal'},
      material,
    ])
  })

  test('has every limit of the design with the rule that governs, NOT KNOWN where it is', () => {
    expect(
      pageAt(pages, 'position', 'p/4p/index.html').limits.map((one) => `${one.limit} (${one.because})`),
    ).toEqual(['not above 1.20 mm diametral (the design governs)', 'not below 0.40 mm diametral ()'])
    expect(pageAt(pages, 'position', 'p/4s/index.html').limits[0]?.limit).toBe(
      'not above: NOT KNOWN - MEASURE AND REPORT',
    )
  })

  test('has its ratings, isolation points with reasons where there is none, jobs, procedures and components', () => {
    const one = pageAt(pages, 'position', 'p/4s/index.html')
    expect(one.ratings.map((line) => `${line.figure} ${line.unit}`)).toEqual(['300 m³/h'])
    expect(one.isolation.map((line) => line.tag || line.noneBecause)).toEqual([
      'HP 4S',
      'no heating coils in this tank',
    ])
    expect(one.jobs.map((line) => line.link.path)).toEqual(['p/4s/job-service.html'])
    expect(one.procedures.map((line) => line.link.path)).toEqual([
      'p/4s/wear.html',
      'p/4s/test.html',
      'ship/card.html',
      'designs/design-a/keep.html',
    ])
    expect(one.components.map((line) => line.text)).toEqual(['H-4s', 'M-4s'])
  })

  test('says NOT KNOWN - MEASURE AND REPORT in its identity strip, never a blank', () => {
    expect(pageAt(pages, 'position', 'p/4s/index.html').head.position?.stackLength).toBe(
      'NOT KNOWN - MEASURE AND REPORT',
    )
  })
})

test('a procedure whose activity is a card is laid out as a card, and no other', () => {
  expect(pageAt(pages, 'procedure', 'ship/card.html').isCard).toBe(true)
  expect(pageAt(pages, 'procedure', 'p/4s/wear.html').isCard).toBe(false)
})

test('a procedure for all pumps of a design says so, and no other', () => {
  expect(pageAt(pages, 'procedure', 'designs/design-a/keep.html').isOfDesign).toBe(true)
  expect(pageAt(pages, 'procedure', 'ship/card.html').isOfDesign).toBe(false)
  expect(pageAt(pages, 'procedure', 'p/4s/wear.html').isOfDesign).toBe(false)
})

describe('the wall sheet', () => {
  test('has torque with lubrication state and clearances of each design aboard, once', () => {
    const [design, ...others] = pageAt(pages, 'values', 'values.html').designs
    expect(others).toEqual([])
    expect(design?.torques).toEqual([
      {
        id: 'hub-bolts',
        joint: 'hub bolts',
        fastener: 'fastener of the hub bolts',
        count: '4',
        torque: {text: '62 N·m', path: 'designs/design-a/torques.html', fragment: 'value--hub-bolts--torque'},
        lubrication: 'lubrication of the hub bolts',
        passes: {text: '62 N·m', path: 'designs/design-a/passes.html', fragment: 'value--hub-bolts--passes'},
        order: {text: '1 3 2 4', path: 'designs/design-a/passes.html', fragment: 'value--hub-bolts--order'},
        wrench: 'wrench of the hub bolts',
        locking: 'locking of the hub bolts',
      },
    ])
    expect(design?.clearances[0]).toMatchObject({
      runningDiameter: {text: '250 mm', path: 'designs/design-a/values.html'},
      newClearance: {text: '0.50 mm diametral', path: 'designs/design-a/values.html'},
      minimumNew: {text: '0.40 mm diametral', path: 'designs/design-a/values.html'},
      renewal: {text: '1.20 mm diametral', path: 'designs/design-a/values.html'},
      because: 'the design governs',
    })
  })

  test('leads to the values of the first pump of the design', () => {
    const paths = pageAt(pages, 'values', 'values.html').designs[0]?.others.map((one) => one.link.path)
    expect(paths).toEqual([
      'designs/design-a/values.html',
      'designs/design-a/values.html',
      'designs/design-a/settings.html',
    ])
  })
})

describe('sources that a page is made from', () => {
  test.each([
    {
      kind: 'start' as const,
      path: 'index.html',
      files: ['designs/design-a.yaml', 'jobs/service.yaml', 'office.yaml', 'vessels/vessel-a/vessel.yaml'],
    },
    {
      kind: 'position' as const,
      path: 'p/4s/index.html',
      files: [
        'designs/design-a.yaml',
        'jobs/service.yaml',
        'office.yaml',
        'procedures/card.md',
        'procedures/keep.md',
        'procedures/test.md',
        'procedures/wear.md',
        'sources.yaml',
        'tables/materials.csv',
        'vessels/vessel-a/vessel.yaml',
      ],
    },
    {
      kind: 'job' as const,
      path: 'p/4s/job-service.html',
      files: [
        'cautions/dirt.yaml',
        'cautions/gas.yaml',
        'cautions/oil.yaml',
        'designs/design-a.yaml',
        'jobs/service.yaml',
        'office.yaml',
        'parts.yaml',
        'procedures/test.md',
        'procedures/wear.md',
        'sources.yaml',
        'tables/cargoes.csv',
        'tables/materials.csv',
        'tables/suitability.csv',
        'terms.yaml',
        'tools.yaml',
        'vessels/vessel-a/vessel.yaml',
      ],
    },
    {
      kind: 'explanations' as const,
      path: 'p/4s/values.html',
      files: [
        'designs/design-a.yaml',
        'office.yaml',
        'procedures/card.md',
        'procedures/keep.md',
        'procedures/test.md',
        'procedures/wear.md',
        'sources.yaml',
        'vessels/vessel-a/vessel.yaml',
      ],
    },
    {
      kind: 'values' as const,
      path: 'values.html',
      files: ['designs/design-a.yaml', 'office.yaml', 'sources.yaml', 'vessels/vessel-a/vessel.yaml'],
    },
    {
      kind: 'cautions' as const,
      path: 'cautions.html',
      files: [
        'cautions/dirt.yaml',
        'cautions/gas.yaml',
        'cautions/oil.yaml',
        'office.yaml',
        'procedures/card.md',
        'procedures/keep.md',
        'procedures/test.md',
        'procedures/wear.md',
        'sources.yaml',
        'vessels/vessel-a/vessel.yaml',
      ],
    },
    {
      kind: 'tools' as const,
      path: 'tools.html',
      files: [
        'office.yaml',
        'procedures/card.md',
        'procedures/keep.md',
        'procedures/test.md',
        'procedures/wear.md',
        'tools.yaml',
        'vessels/vessel-a/vessel.yaml',
      ],
    },
    {
      kind: 'words' as const,
      path: 'words.html',
      files: ['office.yaml', 'terms.yaml', 'vessels/vessel-a/vessel.yaml'],
    },
  ])('of kind $kind are all named, each once', ({kind, path, files}) => {
    expect([...pageAt(pages, kind, path).head.madeFrom].sort()).toEqual(files)
  })
})
