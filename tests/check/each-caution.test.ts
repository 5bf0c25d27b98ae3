import {readdirSync, readFileSync} from 'node:fs'
import {relative} from 'node:path'
import {fileURLToPath} from 'node:url'
import {VFile} from 'vfile'
import {describe, expect, test} from 'vitest'
import {parse} from 'yaml'
import {checkContent} from '../../src/check/check-content.ts'
import {hazardClassesOfActions, reactiveCargoHazard} from '../../src/check/rules/hazard-classes-of-actions.ts'
import type {Content} from '../../src/handbook-model/content.ts'
import type {ContentSources} from '../../src/handbook-model/sources.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {sortedMessages} from '../../src/messages/print-messages.ts'
import {readSources} from '../../src/read/read-sources.ts'
import {servesVesselOne} from '../commands/vessel-one.ts'

const folder = fileURLToPath(new URL('../../content', import.meta.url))
const cautions = readdirSync(`${folder}/cautions`).map((name) => name.replace('.yaml', ''))
const classes = new Map<string, string>(
  cautions.map((caution) => [
    caution,
    parse(readFileSync(`${folder}/cautions/${caution}.yaml`, 'utf8'))['hazard-class'],
  ]),
)
const classOf = (caution: string): string => classes.get(caution) ?? ''

const readFiles: ContentFiles = new Map()
const sources = withVesselOne(await readSources(folder, readFiles))

/** The cautions stand in the procedures, whatever the vessel: one vessel is enough to check them with. */
function withVesselOne(read: ContentSources): ContentSources {
  return {...read, yaml: new Map([...read.yaml].filter(([path]) => servesVesselOne(relative(folder, path))))}
}

/** Errors of the demonstration with the uses of one caution or of one restoration taken out. */
function errorsWithout(taken: RegExp): readonly string[] {
  const files: ContentFiles = new Map(
    [...readFiles].map(([path, file]) => [path, new VFile({path, value: file.value})]),
  )
  const markdown = new Map(
    [...sources.markdown].map(([path, {tree, ...source}]) => [
      path,
      {...source, tree: {...tree, children: without(tree.children, taken)}},
    ]),
  )
  checkContent({...sources, markdown}, files)
  return sortedMessages(files)
    .filter((message) => message.fatal === true)
    .map((message) => message.reason)
}

/** Parsed Markdown without the directives whose source matches, nested ones too; what holds none of them stays as it is. */
function without<T>(nodes: readonly T[], taken: RegExp): T[] {
  return nodes
    .filter((node) => !taken.test(directiveText(node)))
    .map((node) => {
      if (typeof node !== 'object' || node === null || !('children' in node) || !Array.isArray(node.children))
        return node
      return {...node, children: without(node.children, taken)}
    })
}

function directiveText(node: unknown): string {
  if (typeof node !== 'object' || node === null || !('type' in node) || node.type !== 'leafDirective')
    return ''
  const name = 'name' in node ? String(node.name) : ''
  return `${name} ${JSON.stringify('attributes' in node ? node.attributes : {})}`
}

function demonstration(): Content {
  const content = checkContent(sources, readFiles)
  if (!content) throw new Error('Unexpected errors in the demonstration, expected none')
  return content
}

const content = demonstration()

/** Steps that a caution guards alone: their action asks for its class, and no other caution of the class stands there. */
function guardedAlone(caution: string): readonly string[] {
  const hazard = classOf(caution)
  return [...content.procedures.values()].flatMap((procedure) =>
    procedure.sections.flatMap((section) =>
      section.items.flatMap((item) => {
        if (item.kind !== 'step') return []
        const asked =
          item.actions.some((action) => hazardClassesOfActions.get(action)?.includes(hazard)) ||
          (hazard === reactiveCargoHazard &&
            item.actions.some((action) => action === 'open-cargo' || action === 'purge'))
        const there = [...section.cautions, ...item.cautions].filter(
          (use) => use.when === undefined && classOf(use.caution.id) === hazard,
        )
        return asked && there.length > 0 && there.every((use) => use.caution.id === caution) ? [item.id] : []
      }),
    ),
  )
}

describe('a caution that is taken out of the content', () => {
  /** A caution of the library may wait for a procedure that this demonstration does not have. */
  const used = cautions.filter((caution) => guardedAlone(caution).length > 0)

  test('is missed nearly everywhere: most cautions guard a step alone', () => {
    expect(used.length).toBeGreaterThan(cautions.length * 0.8)
  })

  /** The gates look at one class at a time: cautions of different classes are taken out together, each class once in a round. */
  const rounds = new Map<number, readonly string[]>()
  const roundOf = (caution: string): number =>
    cautions.filter((one) => classOf(one) === classOf(caution)).indexOf(caution)
  const errorsOfRound = (round: number): readonly string[] => {
    const taken = cautions.filter((one) => roundOf(one) === round)
    const known =
      rounds.get(round) ?? errorsWithout(new RegExp(`^caution .*"ref":"(?:${taken.join('|')})"`, 'u'))
    rounds.set(round, known)
    return known
  }

  test.each(used)('%s: the check names every step that it guarded, and its hazard class', (caution) => {
    const guarded = guardedAlone(caution)
    expect(guarded.length).toBeGreaterThan(0)
    const errors = errorsOfRound(roundOf(caution))
    for (const step of guarded) {
      expect(
        errors.some((line) => line.includes(`step \`${step}\``) && line.includes(classOf(caution))),
        step,
      ).toBe(true)
    }
  })

  test('is demanded by at least one action class', () => {
    const demanded = new Set([...[...hazardClassesOfActions.values()].flat(), reactiveCargoHazard])
    expect(cautions.filter((caution) => !demanded.has(classOf(caution)))).toEqual([])
  })
})

describe('a restoration that is taken out of the content', () => {
  const roles = new Set(
    [...content.procedures.values()].flatMap((procedure) =>
      procedure.sections.flatMap((section) =>
        section.items.flatMap((item) =>
          item.kind === 'step'
            ? item.parts.flatMap((part) => (part.kind === 'restore' ? [part.role] : []))
            : [],
        ),
      ),
    ),
  )

  const errors = errorsWithout(/^restore /u)

  test.each([...roles])('%s: the check names the isolation', (role) => {
    expect(errors.some((line) => line.startsWith(`Unexpected isolation of \`${role}\` in step`))).toBe(true)
  })
})
