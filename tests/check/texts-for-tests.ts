import {checkContentData} from '../../src/check/check-content-data.ts'
import type {ContentData} from '../../src/check/content-data.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {sourcesFromTexts} from '../../src/read/read-sources.ts'
import {messagesOf} from '../read/messages-of.ts'

const office = `issuer: Example Office
contact: [Duty superintendent]
languages: [en]
demonstration: yes
approver-role: technical superintendent
owner-role: technical office
people:
  - {id: author, role: pump engineer, may: [write]}
origin: {status: common-practice, source: rules}
facts:
  - id: backstop
    title: backstop
    scope: position
    values:
      - {id: fitted, title: fitted}
      - {id: none, title: none}
house:
  wear-ring-renewal: 1.0 mm radial
  entry-limits:
    - {id: oxygen, gas: oxygen, side: not-below, limit: 20.9 %}
  tightness-test-pressure: 3 bar(g)
  tightness-stabilise: 10 min
  tightness-hold-least: 30 min
  purge-lift-margin: 0.5 bar
  isolation-proof: 10 min
  isolation-recheck: 30 min
  tightening-passes: [50 %, 100 %]
  purge-changes: 5
  purge-least: 5 min
  entry-air-changes: 20
  entry-retest: 30 min
  lifting-reserve: 125 %
  test-run-watch: 95 %
  test-run-act: 90 %
  oil-tolerance: 10 %
  flush-changes: 10
  portable-rig-time: 90 min
  rubber-life: 84 months
  store-warmest: 25 °C
`

const sources = `sources:
  - {id: rules, title: Rules of the house, edition: "1", kind: practice, status: current, how-known: demonstration}
  - {id: drawing, title: Drawing, edition: "2", kind: drawing, status: current, how-known: demonstration}
`

const caution = `id: pinch
hazard-class: H07
word: WARNING
worst-harm: death-or-serious-injury
likelihood: could
title: Falling part
hazard: The part can fall.
consequence: It crushes.
avoid: [Keep hands away.]
protection: [gloves]
residual-risk: low
source: rules
`

const design = `id: design-a
title: Design A
variant: A1
description: A pump.
intended-use: Pumping.
misuse: Running dry.
origin: {status: as-built, source: drawing, where: sheet 1}
ratings:
  - {id: flow, title: rated flow, value: 300 m³/h}
facts: {}
joints:
  - id: hub-bolts
    title: hub bolts
    thread: M12
    class: A4-80
    head: hexagon
    hole: medium
    count: 8
    length: 45 mm
    utilisation: 80 %
    lubrication: paste
    locking: plates
    pattern: crosswise
rings:
  - id: lower-ring
    title: lower wear ring
    running-diameter: 214 mm
    material: bronze
    new: 0.55 mm diametral
    minimum-new: 0.50 mm diametral
    renewal: 1.20 mm diametral
cofferdam:
  outer-pipe-bore: 150 mm
  inner-pipe-outside: 139.7 mm
  head-volume: 2.0 l
  rating: 6 bar(g)
  lip-reverse-limit: 3.5 bar
  allowed-leak: 5 ml/min
  relief-valve-setting: 4 bar(g)
masses:
  - {id: head, title: pump head, value: 186 kg}
settings: []
limits:
  - {id: renew-ring, title: renewal, side: not-above, value: lower-ring.renewal, outside: RENEW, action: renew the ring}
geometry:
  - {id: impeller, title: impeller, value: 386 mm}
`

const vessel = `id: vessel-a
name: Vessel A
hull-number: "0937241"
built: 2011-06-30
ship-type: tanker
origin: {status: as-built, source: drawing}
deadweight: 17600 t
locations: [Bridge]
hydraulics:
  system-pressure: 240 bar(g)
  return-pressure: 6 bar(g)
  purge-regulator-maximum: 4 bar(g)
  oil: grade 46
facts: {}
cargoes: [gas-oil]
tanks:
  - {id: 1p, tag: 1P, volume: 486 m³, height: 9.62 m, vacuum-valve: -0.035 bar(g), pressure-valve: 0.2 bar(g), plan: {from-frame: 146, to-frame: 157, from-side: -0.62, to-side: 0}}
  - {id: 1s, tag: 1S, volume: 484 m³, height: 9.62 m, vacuum-valve: -0.035 bar(g), pressure-valve: 0.2 bar(g), plan: {from-frame: 146, to-frame: 157, from-side: 0, to-side: 0.62}}
isolation-pattern:
  pressure:
    - {id: "{tag}-pressure", tag: "HP {tag}", medium: oil, kind: valve, normal: open, isolated: closed, where: "deck at {tag}", lock: lock, proof: gauge, restored-with: opened}
  heating: {none: no coils}
positions:
  - id: 1p
    tag: 1P
    tank: 1p
    design: design-a
    serial: A-1
    role: main
    critical: no
    installed: 2011-02-09
    stack-length: 9.2 m
    components: {head: H-1, motor: M-1}
    facts: {backstop: fitted}
  - id: 1s
    tag: 1S
    tank: 1s
    design: design-a
    serial: A-2
    role: main
    critical: yes
    installed: 2011-03-10
    stack-length: {value: not known, reason: never measured}
    components: {head: H-2}
    facts:
      backstop: {value: not known, reason: no record}
    isolation:
      pressure: {none: pump is blinded}
tools-aboard:
  - {tool: wrench, number: T1, location: store}
spares-aboard:
  - {part: ring, quantity: 2, location: store}
supplies: {purge-gas-flow: 60 l/min, bottle-volume: 50 l, bottle-pressure: 150 bar(g), flush-flow: 40 l/min, drum-volume: 200 l, oil-bulk-modulus: 15000 bar, oil-expansion: 0.0007 1/K, ventilator-flow: 6000 m³/h}
`

const texts: Readonly<Record<string, string>> = {
  'office.yaml': office,
  'sources.yaml': sources,
  'terms.yaml': 'terms:\n  - {id: cofferdam, term: cofferdam, meaning: gap, not-used: [void]}\n',
  'tools.yaml':
    'origin: {status: assumed, source: rules}\ntools:\n  - {id: wrench, title: wrench, size: 19 mm}\n  - {id: gauge, title: gauge, size: 6 bar, instrument: {graduation: 0.05 bar(g), uncertainty: 0.02 bar}}\n',
  'parts.yaml': 'parts:\n  - {id: ring, title: ring, class: spare, size: 214 mm}\n',
  'cautions/pinch.yaml': caution,
  'designs/design-a.yaml': design,
  'vessels/vessel-a/vessel.yaml': vessel,
  'jobs/service.yaml':
    'id: service\ntitle: Service\npurpose: Renew.\ninterval: {origin: {status: common-practice, source: rules}, hours: 5000 h, calendar: [{every: 60 months}], reason: wear}\nprocedures: [rings]\nas-found: [wear]\nas-left: [clearance]\n',
  'tables/threads.csv':
    '# title: Threads\n# source: rules\n# edition: one\n# status: assumed\n# unit diameter: mm\n# unit pitch: mm\nsize,diameter,pitch\nM10,10,1.5\nM12,12,1.75\n',
  'tables/bolt-heads.csv':
    '# title: Heads\n# source: rules\n# edition: one\n# status: assumed\n# unit bearing-diameter: mm\n# unit wrench: mm\nsize,head,bearing-diameter,wrench\nM12,hexagon,16.63,18\nM12,socket,17.23,10\n',
  'tables/clearance-holes.csv':
    '# title: Holes\n# source: rules\n# edition: one\n# status: assumed\n# unit fine: mm\n# unit medium: mm\n# unit coarse: mm\nsize,fine,medium,coarse\nM12,13,13.5,14.5\n',
  'tables/property-classes.csv':
    '# title: Classes\n# source: rules\n# edition: one\n# status: assumed\n# unit above-diameter: mm\n# unit up-to-diameter: mm\n# unit yield: N/mm²\n# unit tensile: N/mm²\nclass,above-diameter,up-to-diameter,yield,tensile\nA4-80,0,20,600,800\n',
  'tables/friction.csv':
    '# title: Friction\n# source: rules\n# edition: one\n# status: assumed\n# unit thread-friction: 1\n# unit head-friction: 1\nid,title,class,thread-friction,head-friction,source\npaste,with paste,B,0.10,0.12,rules\n',
  'tables/running-clearances.csv':
    '# title: Clearances\n# source: rules\n# edition: one\n# status: assumed\n# unit from: mm\n# unit below: mm\n# unit clearance: mm diametral\nfrom,below,clearance\n0,250,0.45\n',
  'tables/cargoes.csv':
    '# title: Cargoes\n# source: rules\n# edition: one\n# status: assumed\n# unit density: kg/m³\nid,title,density,flammable,water-reactive,toxic,purge-medium,word,protection\ngas-oil,Gas oil,840,yes,no,no,nitrogen,WARNING,gloves\n',
}

/** A small content without a fault, as texts that a test may spoil. */
export interface Texts {
  /** Puts new words in the place of old ones that stand there; throws when they do not. */
  replace(path: string, old: string | RegExp, words: string): void
  write(path: string, text: string): void
  read(path: string): string
  remove(path: string): void
}

/** What came of checking the spoiled texts. */
export interface Checked {
  readonly data: ContentData
  readonly files: ContentFiles
  /** Whole message lines with remedy and other place. */
  readonly messages: readonly string[]
  /** The same without remedy and other place. */
  readonly lines: readonly string[]
}

/** Checks the small content after a test has spoiled it. */
export function checkAfter(spoil: (texts: Texts) => void): Checked {
  const changed = new Map(Object.entries(texts))
  const read = (path: string): string => {
    const text = changed.get(path)
    if (text === undefined) throw new Error(`Unexpected \`${path}\`, expected a file of the small content`)
    return text
  }
  spoil({
    read,
    write: (path, text) => changed.set(path, text),
    remove: (path) => {
      read(path)
      changed.delete(path)
    },
    replace: (path, old, words) => {
      const after = read(path).replace(old, () => words)
      if (after === read(path))
        throw new Error(`Unexpected \`${path}\` without \`${old}\`, expected it there`)
      changed.set(path, after)
    },
  })
  const files: ContentFiles = new Map()
  const data = checkContentData(sourcesFromTexts(changed, files), files)
  const messages = messagesOf(files)
  return {data, files, messages, lines: messages.map((line) => line.split(' | ')[0] ?? line)}
}
