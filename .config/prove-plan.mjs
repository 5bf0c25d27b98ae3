// Plans the parts of `npm run prove`: which pages each part looks at, so that a part stays well below nine minutes and all parts below forty-five.

import {createHash} from 'node:crypto'

/** Seconds that a part is planned for at most; it is stopped after nine minutes. */
export const partSeconds = 390

/** Seconds that all parts are planned for at most. */
export const allSeconds = 2600

/** Seconds that one page, kill or build takes until it has been measured, on two cores. */
export const firstRates = {
  'published-text': 0.15,
  'open-chromium-on': 0.12,
  'open-chromium-off': 0.12,
  'open-firefox-on': 0.15,
  'open-firefox-off': 0.15,
  'print-chromium-on': 0.6,
  'print-chromium-off': 0.5,
  'print-firefox-on': 1.2,
  'print-firefox-off': 1.2,
  'same-bytes': 45,
  'killed-builds': 6,
  'stopped-issues': 30,
  'unnoticed-changes': 90,
  'recomputed-numbers': 5,
}

/** What a part costs before its first page: program and browser start, folders are copied. */
const startSeconds = 15

/** Works that are one check, however much they look at. */
export const singleChecks = new Map([
  ['same-bytes', 'all files'],
  ['stopped-issues', 'every call of the disk'],
  ['unnoticed-changes', 'every calculation'],
  ['recomputed-numbers', 'every figure'],
])

/** How many builds are killed. */
export const kills = 50

/** Same markup apart from words and figures gives the same layout class: such pages differ on screen and paper by their words alone. */
export function layoutClass(html) {
  const main = html.slice(Math.max(0, html.indexOf('<main')))
  const tags = main.match(/<\/?[a-z][^>]*>/gu) ?? []
  const shape = tags.map((tag) => {
    const name = /^<\/?[a-z0-9-]+/u.exec(tag)?.[0]
    const marks = tag.match(/ (?:class|id)="[^"]*"/gu) ?? []
    return `${name}${marks.join('')}`
  })
  return createHash('sha256').update(shape.join('\n')).digest('hex').slice(0, 12)
}

/** What planning needs to know of a published page. */
export function describePage(vessel, path, html) {
  const kind = /<body[^>]* data-kind="([^"]*)"/u.exec(html)?.[1] ?? 'frame'
  const name = path.slice(path.lastIndexOf('/') + 1)
  return {vessel, path, kind, layout: `${kind} ${name} ${layoutClass(html)}`}
}

/** One page for each layout class of each vessel. */
function sampleOf(pages) {
  const seen = new Set()
  return pages.filter(({vessel, layout}) => {
    const key = `${vessel} ${layout}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

/** As many of a list as are asked for, evenly spread over it. */
function spread(list, count) {
  return Array.from({length: count}, (_, index) => list[Math.floor((index * list.length) / count)])
}

const procedures = (pages) => pages.filter((page) => page.kind === 'procedure')

/**
 * What is left out first when not everything fits into the time, the dearest and least telling first.
 * `later` thins the vessels after the first alone.
 */
const thinnings = [
  {works: ['print-firefox-off', 'print-chromium-off'], thin: sampleOf, words: 'a layout class each'},
  {
    works: ['print-firefox-on', 'print-chromium-on'],
    thin: sampleOf,
    later: true,
    words: 'a layout class each after the first vessel',
  },
  {
    works: ['open-firefox-off', 'open-chromium-off'],
    thin: procedures,
    later: true,
    words: 'procedures alone after the first vessel',
  },
  {
    works: ['open-firefox-off', 'open-chromium-off', 'open-firefox-on', 'open-chromium-on'],
    thin: sampleOf,
    later: true,
    words: 'a layout class each after the first vessel',
  },
  {works: ['open-firefox-off', 'open-chromium-off'], thin: procedures, words: 'procedures alone'},
  {works: ['print-firefox-on'], thin: sampleOf, words: 'a layout class each'},
  {works: ['open-firefox-off', 'open-chromium-off'], thin: sampleOf, words: 'a layout class each'},
  {works: ['print-chromium-on'], thin: sampleOf, words: 'a layout class each'},
  {
    works: ['published-text'],
    thin: sampleOf,
    later: true,
    words: 'a layout class each after the first vessel',
  },
]

/**
 * Parts for the pages of all vessels.
 *
 * A work that would take too long is split into parts of equal size. When all
 * works together take too long, works are thinned one after the other until
 * they fit; each part says what was left out.
 */
export function planParts(pages, rates) {
  const first = pages[0]?.vessel
  const works = new Map(
    Object.keys(firstRates).map((work) => [work, {units: unitsOf(work, pages), words: ''}]),
  )
  const rateOf = (work) => rates[work] ?? firstRates[work]
  const seconds = (work) => works.get(work).units.length * rateOf(work)
  const partsOf = (work) => Math.max(1, Math.ceil(seconds(work) / (partSeconds - startSeconds)))
  const total = () =>
    [...works.keys()].reduce((sum, work) => sum + startSeconds * partsOf(work) + seconds(work), 0)
  for (const {works: names, thin, later, words} of thinnings) {
    for (const name of names) {
      if (total() <= allSeconds) break
      const before = works.get(name)
      const kept = new Set(thin(later ? before.units.filter((page) => page.vessel !== first) : before.units))
      const optional = before.units.filter((page) => !kept.has(page) && !(later && page.vessel === first))
      if (optional.length === 0) continue
      const most = Math.floor(optional.length - (total() - allSeconds) / rateOf(name))
      const added = new Set(spread(optional, Math.max(0, most)))
      const dropped = new Set(optional.filter((page) => !added.has(page)))
      works.set(name, {
        units: before.units.filter((page) => !dropped.has(page)),
        words: added.size > 0 ? `${words}, and ${added.size} more` : words,
      })
    }
  }
  return [...works].flatMap(([name, {units, words}]) => {
    const count = partsOf(name)
    const whole = unitsOf(name, pages).length
    return Array.from({length: count}, (_, index) => {
      const own = units.slice(
        Math.floor((units.length * index) / count),
        Math.floor((units.length * (index + 1)) / count),
      )
      return {
        name: count === 1 ? name : `${name}-${index + 1}`,
        work: name,
        units: own,
        estimate: startSeconds + own.length * rateOf(name),
        left: words === '' ? '' : `${units.length} of ${whole}: ${words}`,
      }
    })
  })
}

function unitsOf(work, pages) {
  const one = singleChecks.get(work)
  if (one) return [{vessel: '', path: one}]
  if (work === 'killed-builds')
    return Array.from({length: kills}, (_, index) => ({vessel: '', path: `kill ${index + 1}`}))
  return work.startsWith('print-') ? procedures(pages) : pages
}
