import type {Content} from '../handbook-model/content.ts'
import type {Difference, Impact, MovedPage, MovedValue} from '../issues/impact.ts'
import {type DifferenceArea, differenceAreas} from '../issues/page-differences.ts'
import type {ImpactItem, ImpactSection, ImpactView} from '../render/render-impact.ts'
import {figureText} from '../technical-text/value-moves.ts'
import {changeWords, impactWords as words} from './impact-words-en.ts'
import type {PreviewBase} from './preview-bases.ts'

/** The reviewer's page as plain strings: each difference numbered once, values first, pages last. */
export function impactView(impact: Impact, bases: readonly PreviewBase[], content: Content): ImpactView {
  const tags = new Map(
    [...content.vessels.values()].flatMap(({id, positions}) =>
      positions.map((one): [string, string] => [`${id}/${one.id}`, one.tag]),
    ),
  )
  const {values, differences, pages} = impact
  const item = (one: Difference): UnnumberedItem => differenceItem(one, tags)
  const areas = differenceAreas.map((area): Unnumbered => {
    const own = differences.filter((one) => one.area === area)
    const items =
      area === 'values' ? [...values.map((one) => valueItem(one, tags)), ...own.map(item)] : own.map(item)
    return {id: area, ...words.areas[area], items}
  })
  const whole: Unnumbered = {
    id: 'whole',
    ...words.whole,
    items: pages.filter(({change}) => change !== 'changed').map(wholeItem),
  }
  const sections = numbered([...areas, whole].filter(({items}) => items.length > 0))
  const pumps = new Set(values.flatMap((move) => move.positions.map((one) => `${move.vessel}/${one}`)))
  const changed = (area: DifferenceArea): number => differences.filter((one) => one.area === area).length
  return {
    words: words.page,
    issuer: content.office.issuer.en,
    demonstration: content.office.demonstration ? words.demonstration : '',
    bases: bases.map((base) => ({name: base.name, against: words.base(base)})),
    counts: [
      {label: words.counts.values, count: String(values.length)},
      {label: words.counts.pumps, count: String(pumps.size)},
      {label: words.counts.steps, count: String(changed('steps'))},
      {label: words.counts.cautions, count: String(changed('cautions'))},
      {label: words.counts.pages, count: String(pages.length)},
      {label: words.counts.vessels, count: String(new Set(pages.map(({vessel}) => vessel)).size)},
    ],
    sections,
    total: words.total(sections.reduce((sum, {items}) => sum + items.length, 0)),
    pages: pages.map(pageRow),
  }
}

/** Pages in few words: names of pages, then the pumps or the design they stand under, vessel by vessel. */
export function placesOf(pages: readonly string[], tags: Tags = new Map()): string {
  const names = new Map<string, string[]>()
  for (const page of pages) {
    const [vessel = '', ...rest] = page.split('/')
    const name = rest.slice(1).join('/')
    const key = [vessel, rest.length > 1 ? name : ''].join('\t')
    const place = rest[0] ?? ''
    names.set(key, [...(names.get(key) ?? []), tags.get(`${vessel}/${place}`) ?? place])
  }
  const groups = new Map<string, string[]>()
  for (const [key, places] of names) {
    const [vessel = '', name = ''] = key.split('\t')
    const where = [vessel, places.join(', ')].join('\t')
    groups.set(where, [...(groups.get(where) ?? []), ...(name === '' ? [] : [name])])
  }
  return [...groups]
    .map(([where, titles]) => {
      const [vessel = '', places = ''] = where.split('\t')
      return titles.length === 0 ? `${vessel}: ${places}` : `${vessel}: ${titles.join(', ')} (${places})`
    })
    .join('; ')
}

/** Tag on the plate of each pump by vessel and position. */
type Tags = ReadonlyMap<string, string>

type UnnumberedItem = Omit<ImpactItem, 'number'>
type Unnumbered = Omit<ImpactSection, 'items'> & {readonly items: readonly UnnumberedItem[]}

function numbered(sections: readonly Unnumbered[]): readonly ImpactSection[] {
  let number = 0
  return sections.map((section) => ({
    ...section,
    items: section.items.map((item) => {
      number += 1
      return {...item, number}
    }),
  }))
}

function valueItem(
  {value, title, vessel, positions, before, after, pages}: MovedValue,
  tags: Tags,
): UnnumberedItem {
  return {
    name: value,
    title,
    change: changeWords[before ? (after ? 'changed' : 'removed') : 'added'],
    before: before ? [figureText(before)] : [],
    after: after ? [figureText(after)] : [],
    places: [
      {
        label: words.pumps,
        text: `${vessel}: ${positions.map((one) => tags.get(`${vessel}/${one}`) ?? one).join(', ')}`,
      },
      {label: words.pages, text: pages.length === 0 ? words.noPage : placesOf(pages, tags)},
    ],
    figure: true,
  }
}

function differenceItem({change, block, before, after, pages}: Difference, tags: Tags): UnnumberedItem {
  return {
    name: change === 'renumbered' ? words.renumbered : block,
    title: '',
    change: changeWords[change],
    before,
    after,
    places: [{label: words.pages, text: placesOf(pages, tags)}],
    figure: false,
  }
}

function wholeItem({page, title, change}: MovedPage): UnnumberedItem {
  return {
    name: page,
    title,
    change: changeWords[change],
    before: change === 'removed' ? [words.pageGone] : [],
    after: change === 'added' ? [words.pageNew] : [],
    places: [],
    figure: false,
  }
}

function pageRow({page, tag, title, change, lines, revision}: MovedPage): ImpactView['pages'][number] {
  return {
    id: page,
    pump: tag ?? '',
    title,
    revision: revision ?? words.noRevision,
    change: change === 'changed' ? words.lines(lines) : changeWords[change],
  }
}
