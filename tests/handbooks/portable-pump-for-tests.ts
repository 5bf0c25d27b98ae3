import type {ChangedContent} from '../commands/changed-content.ts'

const vesselFile = 'vessels/vessel-s/vessel.yaml'

const design = `id: design-p
title: Design P, portable pump
variant: P1
description: A small pump on hoses, lowered through a hatch.
intended-use: Emptying a tank whose own pump stands.
misuse: Running dry.
origin: {status: as-built, source: demo-data, where: sheet 9}
ratings: [{id: flow, title: rated flow, value: 60 m³/h}]
facts: {}
joints: []
rings: []
masses: [{id: pump, title: portable pump, value: 62 kg}]
settings: [{id: depth, title: deepest place, value: 18 m}]
limits: []
geometry: []
`

const position = `  - id: portable-1
    tag: PORTABLE 1
    kept-at: forward store
    design: design-p
    serial: P-7
    role: portable
    critical: yes
    installed: 2011-06-01
    components: {head: H-7}
    facts: {backstop: none}
`

const rig = `---
id: rig
activity: preparation
maintenance: all
scope: position
when: role = portable
performed-by: second engineer
supervised-by: chief engineer
competence: crew
people: 2
hours: 1
clear-height: none
weather: calm
permits: []
tools: []
parts: []
records: []
retired-ids: []
---
# Rig the portable pump

This procedure lowers the portable pump.

## State before

- The hatch is open.

## State after

- The pump hangs in the tank.

## Lower it

::section{#lower}

::hold-point{#nameplate title=Nameplate signed-by="second engineer" second-by=pumpman}

1. :step{#tie} Tie the guide line of :value{ref=setting.depth} to its handle.
`

/** Puts a portable pump aboard the small vessel, with a procedure and a job of its own; its other procedure is for fixed pumps. */
export function addPortablePump(content: ChangedContent, fixed = 'when: role ≠ portable\n'): void {
  content.write('designs/design-p.yaml', design)
  content.replace(vesselFile, 'tools-aboard:', (found) => `${position}${found}`)
  content.write('procedures/rig.md', rig)
  if (fixed !== '') {
    content.replace('procedures/ring-check.md', 'scope: position\n', (found) => `${found}${fixed}`)
    content.replace('jobs/ring-service.yaml', 'title: Ring service\n', (found) => `${found}${fixed}`)
  }
  content.write(
    'jobs/rig-drill.yaml',
    `id: rig-drill
title: Rig drill
when: role = portable
purpose: Show that the portable pump can be rigged.
interval:
  origin: {status: common-practice, source: common-practice}
  calendar: [{every: 3 months}]
  reason: Starting value of the office.
procedures: [rig]
as-found: []
as-left: []
`,
  )
}
